// What the list has for a missing line is taken where it is what the line is there for: savour for savour, the voices of a blend, the
// green of a leaf. Formulas are invented.
#include <set>

#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;
using namespace scenario;

namespace savour_to_hand_test {

const std::string mass = "1500 g pork shoulder\n300 g pork backfat\n";

TEST_CASE("a savoury sauce of the list stands in for another before salt and water") {
    const std::vector<std::pair<std::string, std::pair<std::string, std::string>>> sauces{
        {"fish sauce", {"soy sauce", "soy-sauce"}}, {"fish sauce", {"tamari", "tamari"}}, {"soy sauce", {"fish sauce", "fish-sauce"}}};
    for (const auto& [missing, sauce] : sauces) {
        CAPTURE(missing, sauce.first);
        const Variant v =
            first_for("Savoury (invented)\n" + mass + "45 g " + missing + "\n20 g salt\n", sauce.first + " 500 g\nno " + missing + "\n");
        CHECK(grams_in(v, sauce.second) > 15);
        CHECK(grams_in(v, "table-salt") > 0);
    }
}

TEST_CASE("without fish the soy sauce of the list takes the place of fish sauce, and where there is none salt does") {
    AdaptRequest request;
    request.without = {"fish"};
    const std::string formula = "Savoury (invented)\n" + mass + "45 g fish sauce\n20 g salt\n";
    const auto with = answer_to(formula, "soy sauce 500 g\nno fish sauce\n", request);
    REQUIRE_FALSE(with.variants.empty());
    CHECK(grams_in(with.variants.front(), "soy-sauce") > 25);
    const auto salt = answer_to(formula, "lemons 2\nno fish sauce\n", request);
    REQUIRE_FALSE(salt.variants.empty());
    CHECK(grams_in(salt.variants.front(), "table-salt") > 24);
}

TEST_CASE("the voice of a blend that the list has comes in beside its heat and colour") {
    const Variant v = first_for("Highland (invented)\n2000 g beef chuck\n400 g beef fat\n50 g berbere\n40 g salt\n",
                                "cayenne\npaprika\nfenugreek, ground\nno berbere\n");
    CHECK(grams_in(v, "fenugreek-seed") == Approx(3).margin(1.5));
    CHECK(grams_in(v, "paprika") > 20);
    CHECK(grams_in(v, "cayenne-powder") > 5);
}

TEST_CASE("who wants it greener gets the greenest stand-in before more of another green") {
    AdaptRequest request;
    request.wants = {"greener"};
    const std::string formula =
        "Bayou (invented)\n2268 g pork butt\n300 g green onions, chopped\n60 g parsley\n160 g onion, chopped\n18 g garlic\n38.6 g salt\n"
        "118 g water\n";
    const auto greener =
        answer_to(formula, "leeks 4\nchives 3 bunches\nparsley 3 bunches\nmustard greens 1 bunch\nno green onions\n", request);
    REQUIRE_FALSE(greener.variants.empty());
    CHECK(grams_in(greener.variants.front(), "chives") > 50);
    CHECK(grams_in(greener.variants.front(), "leek") > 100);
    CHECK(greener.variants.front().wants.front().met);
}

TEST_CASE("a bunch of the nearest herb goes in, and others make up the rest") {
    const Variant v = first_for("Fronds (invented)\n3000 g pork shoulder\n1000 g pork belly\n150 g fennel fronds, chopped\n72 g salt\n",
                                "fennel bulbs 3\nfennel seed 50 g\ndill 1 bunch\ntarragon 1 bunch\nno fennel fronds\n");
    CHECK(grams_in(v, "dill") > 25);
}

TEST_CASE("another way is no handful for what the first fills, and no mix of what those before it say") {
    const auto handful = answer_to("Kupati (invented)\n2000 g pork neck\n500 g pork belly\n90 g cilantro, chopped\n45 g salt\n",
                                   "flat parsley 3 bunches\ncelery leaves 15 g\nno cilantro\n");
    for (const auto& v : handful.variants) CHECK(grams_in(v, "parsley") > 0);
    const auto mix = answer_to("Fronds (invented)\n3000 g pork shoulder\n1000 g pork belly\n150 g fennel fronds, chopped\n72 g salt\n",
                               "fennel bulbs 3\nfennel seed 50 g\ndill 1 bunch\ntarragon 1 bunch\nno fennel fronds\n");
    std::set<std::string> told;
    for (const auto& v : mix.variants) {
        const std::size_t before = told.size();
        for (const auto& edit : v.edits) told.insert(edit.with);
        CHECK(told.size() > before);
    }
}

TEST_CASE("what the list names for a liquid goes in before more of the fat that is there") {
    const std::string cream = "Blanc (invented)\n800 g pork shoulder\n200 g pork backfat\n16 g salt\n80 g cream\n";
    CHECK(grams_in(first_for(cream, "evaporated milk 400 g\nno cream\n"), "evaporated-milk") > 70);
}

TEST_CASE("turmeric for the yellow of another colour stays under what tastes of it") {
    const Variant v = first_for("Red (invented)\n2500 g pork leg\n700 g pork fat\n100 g achiote paste\n50 g salt\n",
                                "sweet paprika 200 g\nturmeric\nno achiote\n");
    CHECK(grams_in(v, "paprika") > 40);
    CHECK(grams_in(v, "turmeric") > 2);
    CHECK(grams_in(v, "turmeric") < 10);
}

}  // namespace savour_to_hand_test
