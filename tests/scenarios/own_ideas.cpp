// The maker has an idea already; the advisor balances the rest round it, or says why it cannot.
#include <algorithm>

#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;

TEST_CASE("own idea: what the maker wants for a line is what stands in for it", "[own]") {
    AdaptRequest request;
    request.use = {{"kale", "spinach"}};
    const auto told = scenario::tell("garden/formula.txt", "", request);
    REQUIRE_FALSE(told.answer.variants.empty());
    for (const auto& variant : told.answer.variants) {
        bool used = false;
        for (const auto& edit : variant.edits) {
            if (edit.line != "spinach") continue;
            INFO(edit.with);
            CHECK((edit.with.empty() || edit.with == "kale"));
            used = used || edit.with == "kale";
        }
        CHECK(used);
    }
}

TEST_CASE("own idea: nothing known of how much to take is said, not passed over", "[own]") {
    AdaptRequest request;
    request.use = {{"walnut", "spinach"}};
    const auto told = scenario::tell("garden/formula.txt", "", request);
    CHECK(told.answer.variants.empty());
    REQUIRE(told.answer.conflict.size() == 1);
    CHECK(in_full(told.answer.conflict.front()) == "use walnut for spinach");
    CHECK_FALSE(told.answer.would_give.empty());
}

TEST_CASE("own idea: no more than the most and no less than the least", "[own]") {
    AdaptRequest request;
    request.most = {{"spinach", 200}};
    const auto told = scenario::tell("garden/formula.txt", "", request);
    REQUIRE_FALSE(told.answer.variants.empty());
    for (const auto& variant : told.answer.variants) {
        double spinach = 0;
        for (const auto& line : variant.formula.lines) spinach += line.ingredient == "spinach" ? line.grams.mid : 0;
        CHECK(spinach <= 200);
    }
    AdaptRequest milder;
    milder.wants = {"milder"};
    milder.least = {{"serrano", 50}};
    for (const auto& variant : scenario::tell("garden/formula.txt", "", milder).answer.variants) {
        const auto serrano = std::find_if(variant.formula.lines.begin(), variant.formula.lines.end(),
                                          [](const Line& line) { return line.ingredient == "serrano"; });
        REQUIRE(serrano != variant.formula.lines.end());
        CHECK(serrano->grams.mid >= 50);
    }
}
