// What a variant is called: what a want misses is told as that, and one change of colour is counted once. Formulas are invented.
#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;
using namespace scenario;

namespace named_by_makers_test {

TEST_CASE("named by makers: a want that is met in part makes no other sausage of small changes") {
    AdaptRequest request;
    request.wants = {"firmer"};
    const auto answer = answer_to(
        "Soft (invented)\n1500 g pork shoulder\n250 g pork backfat\n300 g spinach, chopped raw\n100 g white wine vinegar\n25 g salt\n",
        "potato starch\nspinach\n", request);
    REQUIRE_FALSE(answer.variants.empty());
    for (const auto& v : answer.variants)
        if (v.felt < 1 && v.edits.size() <= 4) CHECK(v.nearness <= Nearness::differs);
}

TEST_CASE("named by makers: another leaf with a nut for a nut is no other sausage") {
    const auto v = first_for(
        "Ramp (invented)\n2000 g pork shoulder\n300 g pork backfat\n150 g wild garlic\n60 g watercress\n50 g pine nuts\n38 g salt\n",
        "scallions 3 bunches\ngarlic\narugula\nalmonds\nno wild garlic\nno watercress\nno pine nuts\n");
    CHECK(v.nearness <= Nearness::differs);
}

}  // namespace named_by_makers_test
