// Stand-ins in two parts: both come in, in the proportion that the swap gives, however much else is missing. Formulas are invented.
#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;
using namespace scenario;

namespace two_parts_test {

const std::string mass = "750 g pork shoulder\n250 g pork backfat\n16 g salt\n40 g water\n2 g black pepper\n";

TEST_CASE("two parts: clove and cinnamon stand in for allspice together") {
    const Variant v = first_for("Spiced (invented)\n" + mass + "2 g allspice\n", "no allspice\ncinnamon\nclove\n");
    const double clove = grams_in(v, "clove"), cinnamon = grams_in(v, "cinnamon");
    CHECK(clove > 0.8);
    CHECK(clove <= 1.0);  // what a kilo takes
    CHECK(cinnamon / clove == Approx(0.684 / 0.553).epsilon(0.1));
}

TEST_CASE("two parts: milk and butter stand in for cream, also where more is missing") {
    const std::string formula = "Creamy (invented)\n" + mass + "60 g heavy cream\n20 g parsley\n3 g dried marjoram\n";
    for (const std::string more : {"", "no parsley\nchervil 50 g\n", "no parsley\nchervil 50 g\nno dried marjoram\ndried thyme\n"}) {
        CAPTURE(more);
        const Variant v = first_for(formula, "no heavy cream\nwhole milk 1 l\nbutter 250 g\n" + more);
        CHECK(grams_in(v, "butter") > 10);
        CHECK(grams_in(v, "whole-milk") > 20);
    }
}

TEST_CASE("two parts: lemon juice and its zest stand in for sumac, neither by itself") {
    const std::string formula = "Red (invented)\n" + mass + "15 g sumac\n20 g parsley\n";
    for (const std::string more : {"", "no parsley\nchervil 50 g\n"}) {
        CAPTURE(more);
        const Variant v = first_for(formula, "no sumac\nlemons 4\n" + more);
        CHECK(grams_in(v, "lemon-juice") > 8);
        CHECK(grams_in(v, "lemon-zest") > 1);
    }
}

TEST_CASE("two parts: no more of the second than is on hand") {
    const Variant v = first_for("Spiced (invented)\n" + mass + "2 g allspice\n", "no allspice\ncinnamon 0.5 g\nclove\n");
    CHECK(grams_in(v, "cinnamon") <= 0.5);
}

}  // namespace two_parts_test
