// A batch for a named allergy: what must go goes, and nothing else that could hurt comes in for it.
#include <set>

#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;

namespace allergy_test {

std::set<std::string> allergens_of(const Prediction& p) {
    std::set<std::string> all;
    for (const auto& a : p.allergens) all.insert(a.allergen);
    return all;
}

const std::set<std::string> packets = {"chicken stock", "beef stock",  "pork stock",       "mushroom stock", "cornmeal",      "rice flour",
                                       "quinoa flakes", "maize flour", "brown rice flour", "sorghum flour",  "chestnut flour"};

TEST_CASE("allergy: no nuts, no milk, no gluten, and no other allergen in their place") {
    AdaptRequest request;
    request.without = {"nuts", "milk", "gluten"};
    request.top = 5;
    const auto told = scenario::tell("allergy/formula.txt", "", request);
    REQUIRE_FALSE(told.answer.variants.empty());
    const auto before = allergens_of(told.answer.base);
    REQUIRE(before.count("milk") + before.count("walnut") + before.count("wheat") == 3);
    for (const auto& v : told.answer.variants) {
        CAPTURE(v.rank);
        for (const char* gone : {"walnut", "breadcrumb", "whole-milk"}) CHECK(scenario::line_of(v.formula, gone) == nullptr);
        CHECK(v.new_allergens.empty());
        for (const auto& allergen : allergens_of(v.prediction)) CHECK(before.count(allergen) == 1);
        // None of it is held, nor held often; of what one packet in many holds that packet is told.
        for (const auto& text : v.prediction.allergens)
            for (const char* gone : {"milk", "walnut", "wheat", "rye", "barley", "oat"}) {
                if (text.allergen != gone) continue;
                CAPTURE(text.from);
                CHECK_FALSE(text.sure);
                for (const auto& food : text.from) CHECK(packets.count(food) == 1);
            }
    }
    // Something stands in for the nuts, and the bind is not lost with the bread.
    const auto& best = told.answer.variants.front();
    CHECK(scenario::has_edit(best, EditKind::replace, "walnut"));
    CHECK(best.differences[Property::bind].mid > -8);
}

}  // namespace allergy_test
