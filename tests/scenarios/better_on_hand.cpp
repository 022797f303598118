// What the list has is used where it is the better stand-in, in company too: two parts where one will not do, the nearer leaf before the
// one that is there, nothing odd beside it. Formulas are invented.
#include <algorithm>

#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;
using namespace scenario;

namespace better_on_hand_test {

const std::string mass = "2000 g pork shoulder\n300 g pork backfat\n40 g salt\n";

TEST_CASE("on hand: molasses and juice for rum, and other juices for other wines and spirits") {
    const auto jerk = first_for("Jerk (invented)\n" + mass + "40 ml dark rum\n30 ml lime juice\n6 g allspice\n",
                                "molasses\napple juice\nlimes 4\nno rum\n");
    CHECK_FALSE(has_edit(jerk, EditKind::omit));
    CHECK(grams_in(jerk, "apple-juice") > 20);
    CHECK(grams_in(jerk, "molasses") > 4);
    const std::pair<const char*, const char*> others[] = {{"60 ml brandy", "white grape juice"},
                                                          {"80 ml dry sherry", "apple juice\ncider vinegar"},
                                                          {"80 ml port", "grape juice\nbalsamic vinegar"},
                                                          {"60 ml mirin", "apple juice\nsugar"},
                                                          {"80 ml sake", "rice vinegar"},
                                                          {"40 ml gin", "juniper berries"}};
    for (const auto& [line, list] : others) {
        CAPTURE(line);
        CHECK_FALSE(has_edit(first_for("Plain (invented)\n" + mass + line + "\n3 g black pepper\n", std::string(list) +
                                                                                                        "\n"
                                                                                                        "no " +
                                                                                                        std::string(line).substr(6) + "\n"),
                             EditKind::omit));
    }
}

TEST_CASE("on hand: fat and ice water for cream before another milk") {
    AdaptRequest request;
    request.without = {"dairy"};
    const std::string cream = "White (invented)\n2 kg pork shoulder\n500 g pork backfat\n150 g cream\n3 g mace\n45 g salt\n";
    const auto v = first_for(cream, "oat milk 1 l\nsoy milk 1 l\nice\nno cream\n", request);
    CHECK(v.new_allergens.empty());
    CHECK(grams_in(v, "pork-backfat") > 530);
    CHECK(grams_in(v, "water") > 60);
    // Words in the midst of a sentence begin small, whatever was left out.
    for (const auto& edit : v.edits) CHECK(edit.why.find("Makes up") == std::string::npos);
    // No beast comes in for it that is not there.
    const auto lamb =
        first_for("Lamb (invented)\n2 kg lamb shoulder\n400 g lamb fat\n150 g cream\n40 g salt\n", "oat milk 1 l\nno cream\n", request);
    CHECK(grams_in(lamb, "pork-backfat") == 0);
}

TEST_CASE("on hand: black pepper is there for another pepper that is not") {
    const std::string green = "Duck (invented)\n1.8 kg duck leg meat\n400 g duck skin\n20 g green peppercorns in brine\n36 g salt\n";
    const auto v = first_for(green, "capers, a jar\nlemons 3\nno green peppercorns\n");
    CHECK(grams_in(v, "black-pepper") > 2);
    CHECK(grams_in(v, "caper") == 0);
    CHECK(grams_in(first_for("Pale (invented)\n" + mass + "6 g white pepper\n", "parsley\nno white pepper\n"), "black-pepper") > 4);
    // What the list denies, or has another of, is not taken for granted.
    CHECK(grams_in(first_for(green, "capers, a jar\nno green peppercorns\nno black pepper\n"), "black-pepper") == 0);
    CHECK(grams_in(first_for(green, "white pepper\nno green peppercorns\n"), "black-pepper") == 0);
}

TEST_CASE("on hand: a word for a herb means the form of it that the list names") {
    const std::string formula = "Thyme (invented)\n" + mass + "6 g dried thyme\n";
    AdaptRequest request;
    request.use = {{"marjoram", "thyme"}};
    const auto fresh = first_for(formula, "marjoram 2 bunches\nno thyme\n", request);
    CHECK(grams_in(fresh, "fresh-marjoram") > 10);
    CHECK(grams_in(fresh, "dried-marjoram") == 0);
    request.use = {{"dried marjoram", "thyme"}};
    CHECK(grams_in(first_for(formula, "marjoram 2 bunches\nno thyme\n", request), "dried-marjoram") > 3);
}

TEST_CASE("on hand: the nearer herb of the list before more of the leaf that is there") {
    const auto v = first_for("Verde (invented)\n" + mass + "60 g cilantro\n60 g parsley\n3 g dried oregano\n",
                             "culantro 1 bunch\nparsley 3 bunches\nno cilantro\n");
    CHECK(grams_in(v, "culantro") > 20);
    CHECK(grams_in(v, "parsley") < 70);
}

TEST_CASE("on hand: herbs that come in for a leaf season no more than it did") {
    for (const auto& [formula, stock] : {std::pair("Leaf (invented)\n1 kg pork shoulder\n110 g cilantro\n17 g salt\n", "culantro plenty\n"),
                                         std::pair("Leaf (invented)\n1 kg pork shoulder\n75 g cilantro\n17 g salt\n", "culantro 10 g\n")}) {
        const std::string line(formula);
        const double leaf = line.find("110 g") != std::string::npos ? 110 : 75;
        const auto v = first_for(line, std::string("no cilantro\nparsley plenty\n") + stock);
        CAPTURE(leaf, grams_in(v, "parsley"), grams_in(v, "culantro"));
        CHECK(grams_in(v, "parsley") > 0.3 * leaf);
        CHECK(grams_in(v, "parsley") + 2 * grams_in(v, "culantro") < 1.02 * leaf);  // culantro is twice as strong
    }
}

TEST_CASE("on hand: of herbs that share a place the nearest comes first, whatever else is missing") {
    const auto v =
        first_for("Forest (invented)\n2.5 kg venison\n800 g pork backfat\n8 g juniper berries\n6 g dried thyme\n20 g garlic\n58 g salt\n",
                  "rosemary 30 g\nbay leaves\nmarjoram 1 bunch\nno juniper\nno thyme\nno garlic\n");
    CHECK(grams_in(v, "fresh-marjoram") > 12);
}

TEST_CASE("on hand: spring onions and onion share the place of leek") {
    const auto v = first_for("Leek (invented)\n2.5 kg pork shoulder\n500 g pork belly\n500 g leeks, sweated\n52 g salt\n",
                             "onions 1 kg\nspring onions 300 g\nno leeks\n");
    CHECK(grams_in(v, "scallion") > 200);
    CHECK(grams_in(v, "onion") > 90);
    CHECK(v.gives_back.empty());
}

TEST_CASE("on hand: preserved lemon is zest, juice and salt, and no olive") {
    const auto v = first_for("Souk (invented)\n2.2 kg lamb shoulder\n300 g lamb fat\n60 g preserved lemon, chopped\n8 g cumin\n34 g salt\n",
                             "lemons 4\ngreen olives, a jar\nno preserved lemons\n");
    CHECK(grams_in(v, "lemon-zest") > 14);
    CHECK(grams_in(v, "lemon-juice") > 22);
    CHECK(grams_in(v, "green-olive") == 0);
    CHECK(grams_in(v, "table-salt") > 36);
    CHECK(v.table.find("missed") == std::string::npos);
}

TEST_CASE("on hand: one root does not come in for two that are missing where another will do for one of them") {
    const auto v =
        first_for("Hill (invented)\n1.5 kg pork shoulder\n300 g pork backfat\n60 g lemongrass, minced\n30 g galangal\n25 g salt\n",
                  "ginger 150 g\nlemons 3\nno lemongrass\nno galangal\n");
    CHECK(grams_in(v, "ginger") < 32);
    CHECK(grams_in(v, "lemon-zest") > 8);
}

TEST_CASE("on hand: parsley and a little mint for basil rather than either") {
    const auto v = first_for("Basil (invented)\n3 kg pork shoulder\n600 g pork backfat\n150 g parsley\n100 g basil\n58 g salt\n",
                             "parsley 300 g\nmint 2 bunches\nno basil\n");
    CHECK(grams_in(v, "mint") > 8);
    CHECK(grams_in(v, "mint") < 30);
    CHECK(grams_in(v, "parsley") > 190);
}

TEST_CASE("on hand: feta and cheddar share the place of blue cheese, and the title is told of") {
    const auto v = first_for("Blue cheese links (invented)\n1.9 kg beef chuck\n120 g blue cheese\n24 g salt\n",
                             "feta 200 g\ncheddar 300 g\nno blue cheese\n");
    CHECK(grams_in(v, "feta") > 30);
    CHECK(grams_in(v, "cheddar") > 30);
    CHECK(std::any_of(v.new_cautions.begin(), v.new_cautions.end(),
                      [](const CautionText& c) { return c.text.find("The title says blue cheese") != std::string::npos; }));
    const auto any =
        first_for("Cheese links (invented)\n1.9 kg beef chuck\n120 g blue cheese\n24 g salt\n", "feta 200 g\nno blue cheese\n");
    for (const auto& c : any.new_cautions) CHECK(c.text.find("The title says") == std::string::npos);
}

TEST_CASE("on hand: who wants it sourer gets juice or vinegar, no ketchup, and the sheet is told what goes over the plate") {
    AdaptRequest request;
    request.wants = {"sourer"};
    const auto answer =
        answer_to("Garlic (invented)\n2.5 kg pork shoulder\n500 g pork backfat\n120 ml cane vinegar\n80 g garlic\n38 g salt\n",
                  "rice vinegar 500 ml\ncalamansi 20\ntamarind paste\ntomato ketchup\nno cane vinegar\n", request);
    REQUIRE_FALSE(answer.variants.empty());
    CHECK(grams_in(answer.variants.front(), "tamarind-pulp") == 0);
    for (const auto& v : answer.variants) {
        CHECK(grams_in(v, "ketchup") == 0);
        for (const auto& back : v.gives_back)
            if (back.kind == ReasonKind::acid_to_hold) CHECK_FALSE(v.formula.to_do.empty());
    }
}

TEST_CASE("on hand: garlic comes with each of two leaves for wild garlic, and is told once") {
    const auto v = first_for("Green (invented)\n2 kg pork shoulder\n500 g pork backfat\n120 g wild garlic\n42 g salt\n",
                             "chives 75 g\nspinach 300 g\ngarlic 1 head\nno wild garlic\n");
    CHECK(grams_in(v, "garlic") >= 7);
    CHECK(grams_in(v, "garlic") < 14);
    CHECK(grams_in(v, "chives") > 40);
}

TEST_CASE("on hand: rice flour for gram flour weighs about as much") {
    const auto v = first_for("Seekh (invented)\n2 kg goat leg\n250 g lamb fat\n60 g besan\n36 g salt\n", "rice flour 1 kg\nno besan\n");
    CHECK(grams_in(v, "rice-flour") > 50);
    CHECK(grams_in(v, "rice-flour") < 70);
}

TEST_CASE("on hand: what formula and list say alike of a herb is told once") {
    const auto answer = answer_to("Thyme (invented)\n" + mass + "10 g thyme\n20 ml rum\n", "thyme\nbrandy\nno rum\n");
    const auto about = std::count_if(answer.base.read_as.begin(), answer.base.read_as.end(),
                                     [](const Reason& one) { return !one.foods.empty() && one.foods.front() == "dried thyme"; });
    CHECK(about == 1);
}

}  // namespace better_on_hand_test
