// What lies on the list is used, in weights that a practised hand would take. Formulas and lists are invented.
#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;
using namespace scenario;

namespace good_stock_test {

bool is_within(double value, double least, double most) { return value >= least && value <= most; }

TEST_CASE("good stock: starch binds fish where the crumbs are gone") {
    const Variant v =
        first_for("Fish balls (invented)\n1 kg cod fillet\n60 g fresh breadcrumbs\n17 g salt\n", "potato starch 300 g\nno breadcrumbs\n");
    CHECK(is_within(grams_in(v, "potato-starch"), 15, 30));
}

TEST_CASE("good stock: rendered fat on the list for skin that is gone") {
    const Variant v =
        first_for("Chicken (invented)\n2 kg skinless chicken thigh\n200 g chicken skin\n38 g salt\n", "duck fat 400 g\nno chicken skin\n");
    CHECK(is_within(grams_in(v, "duck-fat"), 75, 115));
}

TEST_CASE("good stock: a closer food on the list goes before more of a line that is there") {
    SECTION("fish") {
        const Variant v = first_for("Fish (invented)\n1 kg cod fillet\n300 g prawns, peeled\n2 egg whites\n18 g salt\n",
                                    "pollock 2 kg\nprawns 600 g\nno cod\n");
        CHECK(is_within(grams_in(v, "pollock"), 950, 1050));
        CHECK(grams_in(v, "shrimp") == Approx(300));
    }
    SECTION("alliums") {
        const Variant v = first_for("Pork (invented)\n2 kg pork shoulder\n110 g onion\n100 g scallions\n34 g salt\n",
                                    "leeks 3\nonions 1 kg\nno scallions\n");
        CHECK(is_within(grams_in(v, "leek"), 70, 130));
        CHECK(grams_in(v, "onion") == Approx(110));
    }
}

TEST_CASE("good stock: the lean that comes in with the belly goes off the lean line") {
    const Variant v = first_for("Venison (invented)\n2 kg venison\n800 g pork backfat\n46 g salt\n", "pork belly 3 kg\nno pork backfat\n");
    const double belly = grams_in(v, "pork-belly"), venison = grams_in(v, "venison");
    CHECK(belly > 1150);
    CHECK(venison < 1700);
    CHECK(belly + venison == Approx(2800).epsilon(0.03));
}

TEST_CASE("good stock: juice for wine comes with the water that the wine was") {
    const Variant v =
        first_for("Pork (invented)\n3 kg pork shoulder\n120 ml white wine\n54 g salt\n80 g parsley\n", "lemons 3\nno white wine\n");
    CHECK(is_within(grams_in(v, "lemon-juice"), 6, 20));
    CHECK(is_within(grams_in(v, "water"), 80, 115));
}

TEST_CASE("good stock: no basketful of fruit for a spoon of vinegar, and the fruit fills its place once") {
    const Variant v = first_for("Chicken (invented)\n3 kg chicken thigh\n200 g green mango, grated\n50 g malt vinegar\n54 g salt\n",
                                "tomatillos 300 g\ngranny smith apples 4\nno green mango\nno malt vinegar\n");
    CHECK(is_within(grams_in(v, "granny-smith-apple") + grams_in(v, "tomatillo"), 130, 260));
}

TEST_CASE("good stock: juice for sumac comes with a little zest") {
    const Variant v = first_for("Lamb (invented)\n3 kg lamb shoulder\n40 g sumac\n54 g salt\n", "lemons 6\nno sumac\n");
    CHECK(is_within(grams_in(v, "lemon-juice"), 35, 65));
    CHECK(is_within(grams_in(v, "lemon-zest"), 4, 10));
}

TEST_CASE("good stock: lime zest for makrut leaf is about its weight, as far as there are limes") {
    const Variant v = first_for("Pork (invented)\n2.4 kg pork shoulder\n15 g makrut lime leaves\n40 g salt\n80 g cilantro\n",
                                "limes 4\nno makrut lime leaves\n");
    CHECK(is_within(grams_in(v, "lime-zest"), 6, 20));
}

TEST_CASE("good stock: seed of the same plant for its leaf") {
    const Variant v = first_for("Pork (invented)\n3 kg pork shoulder\n5 g fenugreek leaves\n54 g salt\n",
                                "fenugreek seed plenty\nfennel fronds 100 g\nno fenugreek leaves\n");
    CHECK(is_within(grams_in(v, "fenugreek-seed"), 1, 3));
}

TEST_CASE("good stock: a stand-in next to the weight of its line weighs the same") {
    const Variant v =
        first_for("Pork (invented)\n3 kg pork shoulder\n100 g pumpkin seeds\n54 g salt\n", "sunflower seeds\nno pumpkin seeds\n");
    const double seeds = grams_in(v, "sunflower-seed");
    CHECK((seeds == Approx(100) || !is_within(seeds, 97, 103)));
}

}  // namespace good_stock_test
