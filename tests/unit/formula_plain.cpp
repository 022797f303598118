#include "formula/formats/formula_plain.hpp"

#include <algorithm>

#include "formula/formats/formula_json.hpp"
#include "formula/reading.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace formula_plain_test {

std::string trouble(const std::string& text) {
    const auto formula = read_formula(text, "f.txt", knowledge());
    REQUIRE_FALSE(formula);
    return formula.error().where + " " + formula.error().message;
}

bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

TEST_CASE("a food counted in words above the same food is a title, and with a figure it is asked about") {
    const std::string lines = "\n1 kg pork shoulder\n18 g salt\n10 g habanero\n12 g serrano\n";
    for (const std::string title : {"One habanero", "A habanero", "Two serranos"}) {
        INFO(title);
        const auto formula = read_formula(title + lines, "f.txt", knowledge());
        REQUIRE(formula);
        CHECK(formula->title == title);
        CHECK(formula->lines.size() == 4);
    }
    CHECK(has(trouble("2 serranos" + lines), "may be the title or a line"));
    CHECK(has(trouble("One lemon\n" + lines), "may be the title or a line"));
}

TEST_CASE("bread that a note serves it with is in no mass") {
    const auto told = [](const std::string& note) {
        const auto formula = read_formula("Test\n1 kg pork shoulder\n18 g salt\nnote: " + note + "\n", "f.txt", knowledge());
        REQUIRE(formula);
        return std::any_of(formula->read_as.begin(), formula->read_as.end(),
                           [](const Reason& one) { return one.kind == ReasonKind::allergen_beside; });
    };
    CHECK_FALSE(told("serve straight from the pan with warm bread"));
    CHECK(told("mix in some warm bread"));
}

TEST_CASE("a formula in plain lines") {
    const auto formula = read_formula(
        "\xEF\xBB\xBFHedgerow green\r\n# a comment\r\n\r\n2 kg pork shoulder\r\n  500 g pork backfat\r\n300 g spinach, blanched 3 min\r\n"
        "salt, 2 % of meat\r\n10 % of batch water\r\nProcess:\r\nplate: 3/8 in\r\nmixing: 2-4 min\r\nmixed at: 36 F\r\nrest: 1 day 12 h\r\n"
        "rest at: 3 °C\r\norder: acid first\r\ncook: poach\r\ncore: 71 C\r\ndiameter: 30 mm\r\nnote: first\r\n",
        "f.txt", knowledge());
    if (!formula) FAIL(formula.error().where + " " + formula.error().message);
    CHECK(formula->title == "Hedgerow green");
    CHECK(formula->note == "first");
    REQUIRE(formula->lines.size() == 5);
    CHECK(formula->lines[3].grams.mid == Approx(50));
    CHECK(formula->lines[4].grams.mid == Approx(2850.0 / 9));
    const Process& process = formula->process;
    CHECK(process.plate_mm == Approx(9.525));
    CHECK(process.mixing_min == 3.0);
    CHECK(process.mixed_at_c == Approx(2.2222).epsilon(1e-3));
    CHECK(process.rest_h == 36.0);
    CHECK(process.rest_at_c == 3.0);
    CHECK(process.order == Order::acid_first);
    CHECK(process.cook == Cook::poach);
    CHECK(process.diameter_mm == 30.0);
}

TEST_CASE("without a title the first line still counts") {
    const auto formula = read_formula("1 kg pork shoulder\n18 g salt\n", "f.txt", knowledge());
    REQUIRE(formula);
    CHECK(formula->title.empty());
    CHECK(formula->lines.size() == 2);
}

TEST_CASE("the same ingredient may stand twice") {
    const auto formula = read_formula("Twice\n100 g spinach\n200 g blanched spinach\n", "f.txt", knowledge());
    REQUIRE(formula);
    CHECK(formula->lines.size() == 2);
}

TEST_CASE("other words for the ways of cooking are read as the nearest one; a braise ends hot") {
    const auto read = [](const std::string& said) {
        return read_formula("Plain\n1 kg pork shoulder\n18 g salt\n" + said + "\n", "f.txt", knowledge()).value().process;
    };
    CHECK(read("cook: pan-fried").cook == Cook::pan);
    CHECK(read("cook: broiled").cook == Cook::grill);
    CHECK(read("cook: Roasted").cook == Cook::oven);
    CHECK(read("cook: simmered").cook == Cook::poach);
    CHECK_FALSE(read("cook: simmered").core_c);
    CHECK(read("cook: crumbles").cook == Cook::loose);
    CHECK(read("cook: braised").cook == Cook::poach);
    CHECK(read("cook: braised").core_c > 85);
    CHECK(read("core: 75 C\ncook: braised").core_c == Approx(75));
    CHECK(read("cook: braised\ncore: 75 C").core_c == Approx(75));
    CHECK_FALSE(read_formula("Plain\n1 kg pork shoulder\ncook: sunlight\n", "f.txt", knowledge()));
}

TEST_CASE("order and cook are unsaid until said, and what is said is written back") {
    const auto silent = read_formula("Plain\n1 kg pork shoulder\n18 g salt\n", "f.txt", knowledge());
    REQUIRE(silent);
    CHECK_FALSE(silent->process.order);
    CHECK_FALSE(silent->process.cook);
    CHECK_FALSE(has(formula_text(*silent, knowledge()), "order"));
    for (const std::string order : {"all together", "salt first", "acid first"})
        for (const std::string cook : {"pan", "grill", "oven", "poach"}) {
            const auto said = read_formula("Plain\n1 kg pork shoulder\norder: " + order + "\ncook: " + cook + "\n", "f.txt", knowledge());
            REQUIRE(said);
            const std::string text = formula_text(*said, knowledge());
            CHECK(has(text, "order: " + order));
            CHECK(has(text, "cook: " + cook));
            const auto json = read_formula(formula_json(*said, knowledge()), "f.json", knowledge());
            REQUIRE(json);
            CHECK(json->process.order == said->process.order);
            CHECK(json->process.cook == said->process.cook);
        }
}

TEST_CASE("all errors at once, in order, each with its place") {
    const std::string all =
        trouble("Bad\n300 g spnch\n  salt to taste\nplate: 10 bananas\ncore: 500 C\nmixin: 3 min\n1 kg pork shoulder\n");
    CHECK(has(all, "f.txt:2:7: unknown ingredient"));
    CHECK(has(all, "f.txt:3:3: \"to taste\""));
    CHECK(has(all, "f.txt:4:8: plate: expected a length"));
    CHECK(has(all, "f.txt:5:7: core: expected between"));
    CHECK(has(all, "f.txt:6:1: "));
    CHECK(has(all, "did you mean \"mixing\"?"));
    CHECK(all.find("f.txt:2") < all.find("f.txt:3"));
}

TEST_CASE("no more than fifty errors") {
    std::string text = "Long\n";
    for (int i = 0; i < 300; ++i) text += "300 g spnch\n";
    const std::string all = trouble(text);
    CHECK(std::count(all.begin(), all.end(), '\n') == 49);
}

TEST_CASE("texts that are no formula") {
    CHECK(has(trouble(""), "empty"));
    CHECK(has(trouble(" \n\t\n"), "empty"));
    CHECK(has(trouble("Title only\n"), "no ingredient lines"));
    CHECK(has(trouble("Title\n\xFF\xFE"), "f.txt:2:1 not UTF-8"));
    CHECK(has(trouble(std::string("Title\nab\0c", 10)), "f.txt:2:3"));
    CHECK(has(trouble("\x7F"
                      "ELF\x01\x02"),
              "control byte"));
}

TEST_CASE("core readings are read and written in the order of time") {
    const auto read =
        read_formula("Curve\n1 kg pork shoulder\n18 g salt\ncore curve: 0 min 4 C, 8 min 131 F, 1 h 71 C\n", "f.txt", knowledge());
    REQUIRE(read);
    REQUIRE(read->process.core_curve.size() == 3);
    CHECK(read->process.core_curve[1].celsius == Approx(55));
    CHECK(read->process.core_curve[2].minutes == Approx(60));
    const auto again = read_formula(formula_text(*read, knowledge()), "again.txt", knowledge());
    REQUIRE(again);
    CHECK(again->process.core_curve == read->process.core_curve);
    for (const std::string bad : {"71 C", "0 min 4 C", "8 min 55 C, 2 min 71 C", "0 min 4 C, 5 min 900 C", "0 min, 4 C"})
        CHECK_FALSE(read_formula("Curve\n1 kg pork shoulder\ncore curve: " + bad + "\n", "f.txt", knowledge()));
}

}  // namespace formula_plain_test
