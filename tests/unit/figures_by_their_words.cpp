// The core is the figure beside the word for it, and not that of the water, the smoke or the oven.
#include "formula/reading.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace figures_by_their_words_test {

Result<Formula> with_method(const std::string& step) {
    return read_formula("Test\n5 kg pork shoulder\n90 g salt\n\nMethod:\n" + step + "\n", "", knowledge());
}

TEST_CASE("a core is read from the figure nearest to its word") {
    for (const auto& [step, core] : std::vector<std::pair<std::string, double>>{{"Poach at 75 C until the core is 72 C.", 72},
                                                                                {"Grill over medium heat until 160F inside.", 71.1},
                                                                                {"Fry gently to 70 C in the middle.", 70},
                                                                                {"Bring the core to 71 C in water of 80 C.", 71},
                                                                                {"Poach in water of 80 C to 72 C throughout.", 72}}) {
        CAPTURE(step);
        const auto read = with_method(step);
        REQUIRE(read);
        REQUIRE(read->process.core_c);
        CHECK(*read->process.core_c == Approx(core).margin(0.06));
        for (const auto& told : read->read_as) CHECK(told.kind != ReasonKind::cooked_too_cool);
    }
}

TEST_CASE("a trade's code of a cut is no share of lean") {
    const auto read = read_formula("Test\nPork shoulder 4D 70VL 1 kg\n18 g salt\n", "", knowledge());
    REQUIRE(read);
    REQUIRE(read->lines.front().fat_pct);
    CHECK(read->lines.front().fat_pct->mid == Approx(30));
}

TEST_CASE("a little that is weighed weighs what is told") {
    const auto read = read_inventory("not much chard, maybe 100 g\nonly a little kale, 50 g\nsalt, nearly out\n", "", knowledge());
    REQUIRE(read);
    REQUIRE(read->items.size() == 3);
    CHECK(*read->items[0].grams == Approx(100));
    CHECK(*read->items[1].grams == Approx(50));
    CHECK(read->missing.empty());
}

TEST_CASE("amounts below a heading per kilo go with every kilo, whatever the heading calls them") {
    for (const char* heading :
         {"Kräuter je kg Masse:", "Außerdem je kg Fleisch:", "Herbes par kilo :", "Hierbas por kilo:", "Erbe per kg:"}) {
        CAPTURE(heading);
        const auto read =
            read_formula(std::string("W\n5 kg Schweineschulter\n90 g Salz\n") + heading + "\n30 g Petersilie\n", "", knowledge());
        REQUIRE(read);
        CHECK(read->lines.back().grams.mid > 140);
    }
}

TEST_CASE("a stalk of celery in other tongues is a stalk, and duck with its skin is fat") {
    for (const char* line : {"1 branche de céleri", "1 costa di sedano", "1 rama de apio", "1 talo de aipo", "1 Stange Sellerie"}) {
        CAPTURE(line);
        const auto read = read_formula(std::string("T\n5 kg pork shoulder\n90 g salt\n") + line + "\n", "", knowledge());
        REQUIRE(read);
        CHECK(read->lines.back().ingredient == "celery");
        CHECK(read->lines.back().grams.mid < 80);
    }
    const auto duck = read_formula("T\n2 kg duck leg meat, with skin\n36 g salt\n", "", knowledge());
    REQUIRE(duck);
    CHECK(duck->lines.front().ingredient == "duck-skin-on");
}

}  // namespace figures_by_their_words_test
