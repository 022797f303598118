// What stands in is of the kind of what is missing before it is anything else: leaf for leaf, herb for herb. Formulas and lists are
// invented.
#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;
using namespace scenario;

namespace own_kind_first_test {

const std::string garden =
    "Green garden sausage (invented)\n2000 g pork shoulder\n400 g back fat\n300 g chard, blanched\n150 g gooseberries\n40 g garlic\n"
    "30 g serrano chile\n60 g toasted pumpkin seeds\n60 g parsley\n60 ml white wine vinegar\n40 g salt\n";

bool stands_in(const Variant& v, const std::string& food, const std::string& line) {
    return std::any_of(v.edits.begin(), v.edits.end(), [&](const Edit& edit) { return edit.line == line && edit.with == food; });
}

TEST_CASE("own kind first: a plain leaf stands in for a plain leaf, and the sour one for the sour fruit") {
    const Variant v = first_for(garden, "nettles 1 kg\nsorrel 400 g\nparsley 2 bunches\nwhite wine vinegar\nno chard\nno gooseberries\n");
    CHECK(grams_in(v, "nettle") > 100);
    CHECK(grams_in(v, "sorrel") > 50);
    CHECK(stands_in(v, "nettle", "chard"));
    CHECK_FALSE(stands_in(v, "sorrel", "chard"));
}

TEST_CASE("own kind first: leaves that fill the place together go before a herb") {
    const Variant v = first_for(
        "Venison (invented)\n1.8 kg venison shoulder\n700 g pork back fat\n180 g nettle tops, blanched and squeezed\n"
        "40 g parsley\n44 g salt\n6 g black pepper\n",
        "no nettles\ndandelion greens 200 g\nspinach 100 g\nparsley\n");
    CHECK(grams_in(v, "parsley") < 60);
    CHECK(grams_in(v, "spinach") + grams_in(v, "dandelion") > 110);
}

TEST_CASE("own kind first: a leaf without scent is no herb") {
    const Variant v = first_for(
        "Herbs of the house (invented)\n1200 g pork shoulder\n300 g pork belly\n80 g parsley\n40 g basil\n10 g fresh sage\n"
        "120 g swiss chard, blanched and squeezed\n22 g salt\n",
        "no basil\nmarjoram 20 g fresh\nbeet greens 300 g\nno chard\nparsley, a large bunch\n");
    CHECK(grams_in(v, "fresh-marjoram") > 1);
    CHECK(stands_in(v, "beet-greens", "chard"));
    CHECK_FALSE(stands_in(v, "beet-greens", "basil"));
    CHECK(grams_in(v, "beet-greens") < 140);
}

TEST_CASE("own kind first: spinach for the leaf of fenugreek and its dried leaf for the scent") {
    const Variant v = first_for(
        "Lamb (invented)\n2.5 kg lamb shoulder\n400 g lamb fat\n200 g fenugreek leaves, blanched and squeezed\n"
        "50 g garlic\n46 g salt\n10 g cumin\n",
        "dried fenugreek leaves (kasuri methi) 50 g\nno fenugreek leaves\nspinach 300 g\ngarlic\n");
    CHECK(grams_in(v, "spinach") > 120);
    CHECK(grams_in(v, "kasuri-methi") > 9);
    CHECK(grams_in(v, "kasuri-methi") < 28);
}

TEST_CASE("own kind first: garlic comes beside whatever leaf stands in for wild garlic, and is told once") {
    const Variant v = first_for(
        "Wild garlic links (invented)\n3.6 kg pork shoulder\n1.1 kg pork belly\n300 g wild garlic leaves, finely cut\n"
        "90 g salt\n10 g white pepper\n",
        "no wild garlic\n3 big leeks\nchives two bunches\nspinach, frozen, 450 g\ngarlic 2 bulbs\n");
    CHECK(grams_in(v, "garlic") > 10);
    CHECK(grams_in(v, "garlic") < 32);
    CHECK(std::count_if(v.edits.begin(), v.edits.end(), [](const Edit& edit) { return edit.with == "garlic"; }) == 1);
}

TEST_CASE("own kind first: the bottle of vinegar makes up for what a stand-in lacks, listed or taken to be there") {
    const std::string formula =
        "Market (invented)\n2 kg pork shoulder\n400 g pork back fat\n120 g cilantro\n180 g tomatillo, roasted\n80 g cider vinegar\n38 g "
        "salt\n";
    const Variant v = first_for(formula, "no tomatillo\ngreen tomatoes 500 g\ncilantro 300 g\nwhite wine vinegar\n");
    CHECK(grams_in(v, "cider-vinegar") + grams_in(v, "white-wine-vinegar") > 90);
}

TEST_CASE("own kind first: fat that is no meat is salted as the fat was") {
    const Variant v =
        first_for("Turkey (invented)\n900 g ground turkey\n115 g pork fat, diced\n40 g dill\n12 g kosher salt\n2 g black pepper\n",
                  "no pork fat\nolive oil\n");
    CHECK(grams_in(v, "kosher-salt") == 12);
}

TEST_CASE("own kind first: the first is the nearest, whatever the colour does") {
    const auto answer = answer_to(garden, "nettles 1 kg\nsorrel 400 g\nspinach 200 g\nwhite wine vinegar\nno chard\nno gooseberries\n");
    for (std::size_t i = 1; i < answer.variants.size(); ++i) CHECK(answer.variants[i].distance >= answer.variants[i - 1].distance - 0.11);
}

TEST_CASE("own kind first: more of toasted seeds that are there is one line of them") {
    const Variant v =
        first_for("Verde (invented)\n4 kg pork shoulder\n250 g cilantro\n100 g toasted pumpkin seeds\n100 g almonds, toasted\n90 g salt\n",
                  "pumpkin seeds 1 kg\nno almonds\n");
    CHECK(grams_in(v, "pumpkin-seed") > 150);
    CHECK(std::count_if(v.formula.lines.begin(), v.formula.lines.end(), [](const Line& l) { return l.ingredient == "pumpkin-seed"; }) == 1);
}

}  // namespace own_kind_first_test
