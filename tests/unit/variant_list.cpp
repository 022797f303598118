// The list of variants that is shown.
#include "adapt/variants/variant_list.hpp"

#include "core/band.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace variant_list_test {

// Each a formula of its own.
std::vector<Line> weighing(double grams) {
    Line line;
    line.ingredient = "pork-shoulder";
    line.grams = exactly(grams);
    return {line};
}

Variant unmet(double distance, std::vector<Edit> edits) {
    Variant v;
    v.distance = distance;
    v.edits = std::move(edits);
    v.wants.push_back({});
    v.formula.lines = weighing(1000 + distance);
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

Edit bringing(EditKind kind, const std::string& line, const std::string& with) {
    Edit edit;
    edit.kind = kind;
    edit.line = line;
    edit.with = with;
    return edit;
}

Variant way(double distance, std::vector<Edit> edits) {
    Variant v;
    v.distance = distance;
    v.edits = std::move(edits);
    v.formula.lines = weighing(1000 + distance);
    return v;
}

TEST_CASE("the same answer with a line dropped or half of it changed is no other way") {
    const Edit dill = bringing(EditKind::replace, "dill", "fennel-fronds"), cream = bringing(EditKind::replace, "cream", "coconut-milk");
    const Edit half = bringing(EditKind::split, "dill", "fennel-fronds"), none = bringing(EditKind::omit, "cream", "");
    const Edit parsley = bringing(EditKind::replace, "dill", "parsley");
    std::vector<Variant> variants{way(1, {dill, cream}), way(2, {half, cream}), way(3, {parsley, none}), way(4, {parsley, cream})};
    put_in_order(variants);
    REQUIRE(variants.size() == 2);
    CHECK(variants.back().distance == 4);
}

}  // namespace variant_list_test
