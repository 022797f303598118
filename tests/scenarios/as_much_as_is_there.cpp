// What is only taken to be there is no store to draw from, and what swaps put first is taken first. Formulas and lists are invented.
#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;
using namespace scenario;

namespace as_much_as_is_there_test {

TEST_CASE("as much as is there: meat that is short is made up from the list, not from a cut that is presumed") {
    const Variant v = first_for("Beef (invented)\n900 g beef chuck\n230 g beef brisket\n60 g parsley\n18 g salt\n",
                                "beef chuck 680 g\npork shoulder 450 g\n");
    CHECK(grams_in(v, "beef-brisket") <= 230);
    CHECK(grams_in(v, "pork-shoulder") > 150);
}

TEST_CASE("as much as is there: lemons on the list and not more of a lime juice that is presumed") {
    const Variant v =
        first_for("Green (invented)\n2.7 kg pork shoulder\n340 g tomatillos, roasted\n80 g cilantro\n30 g lime juice\n50 g salt\n",
                  "green tomatoes 500 g\nlemons 4\nno tomatillos\n");
    CHECK(grams_in(v, "lime-juice") <= 30);
}

TEST_CASE("as much as is there: of the herbs on hand the one that swaps put first") {
    const Variant v =
        first_for("Beef (invented)\n1.1 kg beef chuck\n60 g parsley\n18 g salt\n", "cilantro 200 g\ncarrot tops 200 g\nno parsley\n");
    CHECK(grams_in(v, "cilantro") > 40);
    CHECK(grams_in(v, "carrot-tops") == 0);
}

TEST_CASE("as much as is there: broad beans for peas as the swaps weigh them") {
    const Variant v = first_for("Field (invented)\n800 g pork shoulder\n250 g pork backfat\n120 g peas, blanched\n20 g salt\n",
                                "broad beans 400 g\nno peas\n");
    CHECK(grams_in(v, "fava-cooked") + grams_in(v, "fava-bean") >= 110);
}

TEST_CASE("as much as is there: a zest that is short is made up by the next") {
    const Variant v =
        first_for("Monsoon (invented)\n1.2 kg pork shoulder\n60 g cilantro\n15 g kaffir lime leaves\n40 g lime juice\n20 g salt\n",
                  "lemons 5\nlimes 2\nno kaffir lime leaves\n");
    CHECK(grams_in(v, "lime-zest") > 4);
}

}  // namespace as_much_as_is_there_test
