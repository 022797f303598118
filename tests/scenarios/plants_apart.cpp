// Of two plants that go by nearly one name each has its own: what is not there is swapped, and named so. Formulas and lists are invented.
#include <algorithm>

#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;
using namespace scenario;

namespace plants_apart_test {

TEST_CASE("plants apart: gooseberries stand in for green plums that are not there") {
    const Variant v = first_for("Mutton (invented)\n1.6 kg mutton shoulder\n180 g green plums, chopped\n28 g salt\n",
                                "gooseberries 200 g\nno green plums\n");
    CHECK(grams_in(v, "green-plum") == 0);
    CHECK(grams_in(v, "gooseberry") > 120);
}

TEST_CASE("plants apart: wild garlic stands in for ramps that are not there") {
    const Variant v =
        first_for("Chicken (invented)\n1.5 kg chicken thigh\n110 g ramps, blanched\n26 g salt\n", "wild garlic 200 g\nno ramps\n");
    CHECK(grams_in(v, "ramps-leaf") == 0);
    CHECK(grams_in(v, "wild-garlic") > 90);
    const auto& cautions = v.prediction.cautions;
    CHECK(std::any_of(cautions.begin(), cautions.end(), [](const CautionText& c) { return c.id == "look-alike-ramps"; }));
}

TEST_CASE("plants apart: borage for salad burnet, dried wakame for nori, potato for panko") {
    const Variant burnet = first_for("Salmon (invented)\n900 g salmon fillet\n20 g salad burnet\n12 g salt\n",
                                     "borage 100 g\nparsley 100 g\nno salad burnet\n");
    CHECK(grams_in(burnet, "borage") > 12);
    const Variant nori =
        first_for("Coast (invented)\n1.3 kg pork shoulder\n30 g nori\n20 g salt\n", "wakame, dried 50 g\nspinach 400 g\nno nori\n");
    CHECK(grams_in(nori, "wakame-dried") > 10);
    CHECK(grams_in(nori, "wakame-dried") < 13.5);  // by its iodine no more than ten grams in a kilo
    const Variant panko = first_for("Salmon (invented)\n900 g salmon fillet\n100 g panko\n12 g salt\n", "rice flour 300 g\nno panko\n");
    CHECK(grams_in(panko, "rice-flour") < 65);
}

TEST_CASE("plants apart: mandarins on a list are their juice and their zest") {
    const Variant v = first_for("Duck with orange (invented)\n1.5 kg duck leg\n60 g orange juice\n8 g orange zest\n26 g salt\n",
                                "lemons 2\nmandarins 5\nno oranges\nno orange juice\nno orange zest\n");
    CHECK(grams_in(v, "tangerine-juice") > 30);
    CHECK(grams_in(v, "mandarin-zest") > 4);
}

}  // namespace plants_apart_test
