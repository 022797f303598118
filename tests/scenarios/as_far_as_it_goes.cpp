// What stands in for a line comes in as far as a sausage takes it, and that is said. Formulas are invented.
#include "core/contains.hpp"
#include "standin/narrate.hpp"
#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;
using namespace scenario;

namespace as_far_as_it_goes_test {

const Engine& engine() {
    static const Engine one = expect(Engine::open({}));
    return one;
}

AdaptAnswer asked(const std::string& formula, const std::string& inventory, AdaptRequest request = {}) {
    const auto read = expect(engine().read_formula(formula, "formula"));
    if (!inventory.empty()) request.have = expect(engine().read_inventory(inventory, "list", &read));
    return expect(engine().adapt(read, request));
}

std::string with_crumbs(const std::string& crumbs, int grams) {
    return "Banger (invented)\n1800 g pork shoulder\n450 g pork belly\n" + std::to_string(grams) + " g " + crumbs +
           "\n240 g water\n170 g onion\n42 g salt\n";
}

TEST_CASE("as far as it goes: no dose of crumbs is so large that the oats on the list stay there") {
    for (const std::string crumbs : {"fresh breadcrumbs", "dry breadcrumbs"}) {
        double last = 0;
        for (const int grams : {60, 90, 120, 150, 180, 210, 240, 300, 360}) {
            CAPTURE(crumbs, grams);
            const auto answer = asked(with_crumbs(crumbs, grams), "rolled oats 1 kg\nno breadcrumbs\n");
            REQUIRE_FALSE(answer.variants.empty());
            const double oats = grams_in(answer.variants.front(), "rolled-oat");
            CHECK(oats >= 0.95 * last);
            CHECK(oats > 0);
            last = oats;
        }
    }
}

TEST_CASE("as far as it goes: where a cap holds a stand-in down that is said, and where none does it is not") {
    const auto why = [](int grams) {
        const auto answer = asked(with_crumbs("fresh breadcrumbs", grams), "rolled oats 1 kg\nno breadcrumbs\n");
        REQUIRE_FALSE(answer.variants.empty());
        for (const auto& edit : answer.variants.front().edits)
            if (edit.with == "rolled-oat") return in_full(edit.reason);
        return std::string();
    };
    CHECK(why(300).find("as much of it as a sausage takes") != std::string::npos);
    CHECK(why(60).find("as much of it as a sausage takes") == std::string::npos);
}

TEST_CASE("as far as it goes: a line that goes with stand-ins on the list is not told as one without") {
    for (const char* list :
         {"rolled oats 1 kg\nno breadcrumbs\n", "cornmeal 1 kg\nno breadcrumbs\n", "rice flour 1 kg\nno breadcrumbs\n"}) {
        const auto answer = asked(with_crumbs("dry breadcrumbs", 300), list);
        for (const auto& variant : answer.variants)
            for (const auto& edit : variant.edits)
                if (edit.kind == EditKind::omit) CHECK(edit.why.find("nothing there stands in for it") == std::string::npos);
    }
}

TEST_CASE("as far as it goes: a paste of beans for another is weighed by its own dose, whatever else is missing") {
    const std::string formula =
        "Kkaennip (invented)\n2 kg pork shoulder\n300 g pork backfat\n60 g scallion\n40 g doenjang\n25 g gochugaru\n15 g garlic\n26 g "
        "salt\n";
    const auto miso = [&](const std::string& list) {
        const auto answer = asked(formula, list);
        REQUIRE_FALSE(answer.variants.empty());
        return grams_in(answer.variants.front(), "miso");
    };
    const double alone = miso("white miso 300 g\nno doenjang\n");
    CHECK(alone > 35);
    CHECK(miso("white miso 300 g\nred chile flakes 50 g\nno doenjang\nno gochugaru\n") <= 1.1 * alone);
}

TEST_CASE("as far as it goes: fat of an animal whose meat is in it may take the whole place of another") {
    const std::string mixed = "Merguez (invented)\n1 kg pork shoulder\n1 kg lamb shoulder\n300 g pork backfat\n60 g parsley\n38 g salt\n";
    AdaptRequest request;
    request.without = {"pork"};
    const auto answer = asked(mixed, "lamb shoulder 3 kg\nlamb fat 1 kg\n", request);
    REQUIRE_FALSE(answer.variants.empty());
    CHECK(grams_in(answer.variants.front(), "lamb-fat") > 250);
}

TEST_CASE("as far as it goes: fenugreek seed has its leaf, and tarragon dill with a little mint") {
    const auto answer = asked(
        "Kupati (invented)\n2 kg pork shoulder\n400 g pork belly\n40 g tarragon\n6 g fenugreek seed, ground\n20 g garlic\n40 g salt\n",
        "kasuri methi 30 g\ndill 2 bunches\nmint 1 bunch\nno tarragon\nno fenugreek seed\n");
    REQUIRE_FALSE(answer.variants.empty());
    const Variant& first = answer.variants.front();
    CHECK(grams_in(first, "kasuri-methi") > 2);
    CHECK(grams_in(first, "kasuri-methi") < 8);
    CHECK(grams_in(first, "dill") > grams_in(first, "mint"));
    CHECK(grams_in(first, "mint") > 0);
}

}  // namespace as_far_as_it_goes_test
