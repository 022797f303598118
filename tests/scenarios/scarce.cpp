// A garden that has too little of everything: whatever is near the missing line is picked, and no one herb fills every gap. Formulas are
// invented.
#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;
using namespace scenario;

namespace scarce_test {

Variant first_for(const std::string& formula, const std::string& inventory, const std::vector<std::string>& without = {}) {
    static const Engine engine = expect(Engine::open({}));
    const auto read = expect(engine.read_formula(formula, "formula"));
    AdaptRequest request;
    if (!inventory.empty()) request.have = expect(engine.read_inventory(inventory, "list", &read));
    request.without = without;
    const auto answer = expect(engine.adapt(read, request));
    REQUIRE_FALSE(answer.variants.empty());
    return answer.variants.front();
}

TEST_CASE("scarce: two leaves that each fill less than half of the place fill it together") {
    const std::string formula = "Terrace (invented)\n2000 g pork shoulder\n300 g spinach, blanched\n35 g salt\n";
    const Variant v = first_for(formula, "chard 150 g\nkale 100 g\nno spinach\n");
    CHECK(grams_in(v, "chard") > 100);
    CHECK(grams_in(v, "kale") > 50);
}

TEST_CASE("scarce: a quarter of the leaf is better than none") {
    const std::string formula = "Terrace (invented)\n2000 g pork shoulder\n200 g sorrel\n35 g salt\n";
    CHECK(grams_in(first_for(formula, "chard 60 g\nlemons 2\nno sorrel\n"), "chard") > 40);
}

TEST_CASE("scarce: of several herbs that are missing not all become parsley") {
    const std::string formula =
        "Six herbs (invented)\n1200 g lamb shoulder\n150 g lamb fat\n40 g mint\n25 g dill\n40 g cilantro\n15 g tarragon\n30 g chervil\n"
        "30 g parsley\n22 g salt\n";
    const std::string list =
        "parsley 150 g\nfennel fronds 40 g\nbasil 40 g\ndried mint\nno mint\nno dill\nno cilantro\nno tarragon\nno chervil\n";
    const Variant v = first_for(formula, list);
    CHECK(grams_in(v, "fennel-fronds") > 10);
    CHECK(grams_in(v, "basil") > 10);
    CHECK(grams_in(v, "dried-mint") > 3);
}

TEST_CASE("scarce: dried and fresh rosemary are one rosemary to the taster") {
    const std::string formula = "Ridge (invented)\n3500 g venison\n1500 g pork belly\n12 g dried rosemary\n20 g dried thyme\n85 g salt\n";
    CHECK(grams_in(first_for(formula, "rosemary plenty\nno dried thyme\n"), "rosemary") < 8);
}

TEST_CASE("without gluten: crumbs sold as gluten-free come first, in the weight of the crumbs; other flours stand after them") {
    const std::string formula = "Crumb (invented)\n1000 g pork shoulder\n100 g dry breadcrumbs\n100 g milk\n50 g egg\n17 g salt\n";
    CHECK(grams_in(first_for(formula, "", {"gluten"}), "gluten-free-breadcrumb") == Approx(100).margin(15));
}

TEST_CASE("binder: as much of another crumb as the maker weighed of the first, over the cap as his own was") {
    const std::string formula = "Banger (invented)\n4000 g pork shoulder\n1000 g back fat\n500 g rusk\n600 g water\n80 g salt\n";
    CHECK(grams_in(first_for(formula, "dry breadcrumbs 1 kg\nno rusk\n"), "breadcrumb") > 400);
}

}  // namespace scarce_test
