// Two greens and a chile are not to be had; what the garden gives replaces them.
#include <algorithm>
#include <cmath>

#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;

TEST_CASE("garden: what is on hand replaces what is missing, and the sausage stays itself") {
    const auto told = scenario::tell("garden/formula.txt", "garden/inventory.txt", {});
    REQUIRE_FALSE(told.answer.variants.empty());
    CHECK(told.answer.conflict.empty());
    CHECK(told.answer.proved);
    for (const auto& variant : told.answer.variants) {
        CAPTURE(variant.rank);
        // Nothing that is not there, and no more than there is.
        for (const char* missing : {"spinach", "sorrel", "serrano"}) CHECK(scenario::line_of(variant.formula, missing) == nullptr);
        const std::pair<const char*, double> stock[] = {
            {"chard", 260}, {"kale", 140}, {"arugula", 90}, {"jalapeno", 180}, {"parsley", 200}};
        for (const auto& [ingredient, grams] : stock) {
            double used = 0;
            for (const auto& line : variant.formula.lines)
                if (line.ingredient == ingredient) used += line.grams.mid;
            CHECK(used <= grams + 1e-9);
        }
        // The parsley is the point of it: untouched.
        CHECK(std::any_of(variant.formula.lines.begin(), variant.formula.lines.end(),
                          [](const Line& line) { return line.ingredient == "parsley" && line.keep && line.grams.mid == 120; }));
    }
    const auto& best = told.answer.variants.front();
    // Colour within 3 CIEDE2000 units, raw mass rested and cooked alike.
    CHECK(best.colour_rested.mid <= 3);
    CHECK(best.colour_cooked.mid <= 3);
    // Salt and fat where they were: well inside one noticeable difference (22 % of the salt, 3 points of fat).
    CHECK(std::abs(best.differences[Property::salt_pct].mid) < 0.1 * told.answer.base.properties[Property::salt_pct].mid);
    CHECK(std::abs(best.differences[Property::fat_pct].mid) < 1.0);
    // As hot as before, give or take what nobody notices at table (40 %).
    const double heat = best.prediction.properties[Property::heat_mg_kg].mid / told.answer.base.properties[Property::heat_mg_kg].mid;
    CHECK(heat > 0.7);
    CHECK(heat < 1.4);
    CHECK(best.new_allergens.empty());
    for (const auto& edit : best.edits) CHECK_FALSE(edit.why.empty());
}

TEST_CASE("garden: with fewer greens on hand the best variant is no better") {
    const auto rich = scenario::tell("garden/formula.txt", "garden/inventory.txt", {});
    auto engine = scenario::expect(Engine::open({}));
    AdaptRequest request;
    request.have = scenario::expect(
        engine.read_inventory("curly kale 60 g\njalapeno 100 g\nparsley 200 g\nno spinach\nno sorrel\nno serrano\n", "poorer"));
    const auto poor = scenario::expect(engine.adapt(rich.formula, request));
    REQUIRE_FALSE(poor.variants.empty());
    CHECK(poor.variants.front().distance >= rich.answer.variants.front().distance - 0.01);
}
