// The list of variants that is shown.
#include "adapt/variant_list.hpp"

#include "support/catch.hpp"

using namespace standin;

namespace variant_list_test {

Variant unmet(double distance, std::vector<Edit> edits) {
    Variant v;
    v.distance = distance;
    v.edits = std::move(edits);
    v.wants.push_back({});
    return v;
}

TEST_CASE("where a plan that changes nothing goes, the others are numbered from one") {
    std::vector<Variant> variants{unmet(0, {}), unmet(2, {Edit{}})};
    put_in_order(variants);
    REQUIRE(variants.size() == 2);
    leave_out_idle(variants, true);
    REQUIRE(variants.size() == 1);
    CHECK(variants.front().distance == 2);
    CHECK(variants.front().rank == 1);
}

}  // namespace variant_list_test
