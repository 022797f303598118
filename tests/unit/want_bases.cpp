// Of what a number in a want is a share, and words for less acid.
#include "adapt/goals/wants.hpp"
#include "standin/engine.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace want_bases_test {

Property property_in(const std::string& want) {
    const auto goals = read_wants({want}, knowledge());
    REQUIRE(goals);
    REQUIRE(goals->size() == 1);
    return goals->front().property;
}

TEST_CASE("wants: salt is meant of the meat, fat of the batch, unless the want says of what") {
    for (const char* want : {"salt<=1.5", "salt<=1.5 %", "salt<=1.5 % of meat", "salt <= 1.5% of the meat", "salt<=1.5 percent of meat"}) {
        CAPTURE(want);
        CHECK(property_in(want) == Property::salt_pct_of_meat);
    }
    for (const char* want : {"salt<=1.5 % of batch", "salt<=1.5 % of the mass", "salt<=1.5 of the batch"}) {
        CAPTURE(want);
        CHECK(property_in(want) == Property::salt_pct);
    }
    CHECK(property_in("fat<=15") == Property::fat_pct);
    CHECK(property_in("fat<=15 % of meat") == Property::fat_pct_of_meat);
    CHECK(property_in("heat<=3 mg/kg") == Property::heat_mg_kg);
    CHECK_FALSE(read_wants({"salt<=1.5 g"}, knowledge()));
    CHECK_FALSE(read_wants({"loss<=15 % of meat"}, knowledge()));
}

TEST_CASE("wants: milder in acid is rounder, and no less heat") {
    for (const char* want : {"milder in acid", "less acid", "less sharp", "less acidic", "less tart"}) {
        const auto goals = read_wants({want}, knowledge());
        CAPTURE(want);
        REQUIRE(goals);
        CHECK(goals->front().property == Property::sourness_mmol_kg);
        CHECK(goals->front().kind == Goal::Kind::at_most);
    }
}

TEST_CASE("lists: baking soda is set aside and told, and stops no list; in a formula it is refused as ever") {
    const Engine engine = opened(16);
    const auto have = engine.read_inventory("spinach 300 g\nbaking soda 1 pack\nparsley 100 g\n", "list");
    REQUIRE(have);
    CHECK(have->items.size() == 2);
    REQUIRE(have->aside.size() == 1);
    CHECK(have->aside.front().find("baking soda") != std::string::npos);
    CHECK_FALSE(engine.read_formula("Test\n1000 g pork shoulder\n4 g baking soda\n18 g salt\n", "formula"));
    CHECK_FALSE(engine.read_inventory("spinach 300 g\nno baking soda but curing salt\n", "list"));
    CHECK_FALSE(engine.read_inventory("spinach 300 g\ncaustic soda 1 pack\n", "list"));
}

TEST_CASE("making: cooked in water is poached") {
    const Engine engine = opened(16);
    for (const char* cook : {"water", "hot water", "poach"}) {
        const auto formula = engine.read_formula("Test\n1000 g pork shoulder\n18 g salt\ncook: " + std::string(cook) + "\n", "formula");
        CAPTURE(cook);
        REQUIRE(formula);
        CHECK(formula->process.cook == Cook::poach);
    }
}

}  // namespace want_bases_test
