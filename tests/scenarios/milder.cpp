// Half the burn at the same weight and colour.
#include <algorithm>
#include <cmath>

#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;

TEST_CASE("milder: half the burn, the same weight and colour, with the chance of still being too hot") {
    AdaptRequest request;
    request.wants = {"milder"};
    const auto told = scenario::tell("milder/formula.txt", "", request);
    REQUIRE(told.answer.variants.size() >= 2);
    CHECK(told.answer.conflict.empty());
    CHECK(told.answer.proved);
    const auto& base = told.answer.base;
    bool seeded = false;
    for (const auto& variant : told.answer.variants) {
        CAPTURE(variant.rank);
        const double heat = variant.prediction.properties[Property::heat_mg_kg].mid / base.properties[Property::heat_mg_kg].mid;
        CHECK(heat < 0.62);
        CHECK(heat > 0.2);
        CHECK(variant.prediction.batch_g > 0.97 * base.batch_g);
        CHECK(variant.prediction.batch_g < 1.03 * base.batch_g);
        CHECK(variant.colour_rested.mid < 3);
        CHECK(variant.colour_cooked.mid < 3);
        REQUIRE(variant.wants.size() == 1);
        CHECK(variant.wants.front().met);
        // A chile is a gamble: no variant may promise.
        CHECK(variant.wants.front().chance > 0.4);
        CHECK(variant.wants.front().chance < 0.999);
        for (const auto& line : variant.formula.lines)
            for (const auto& step : line.prepared) seeded = seeded || step.preparation == "seeded";
    }
    CHECK(seeded);
}

TEST_CASE("milder: with the chiles kept there is no way, and the answer says so") {
    AdaptRequest request;
    request.wants = {"heat<=0.5"};
    request.keep = {"serrano", "jalapeño"};
    const auto told = scenario::tell("milder/formula.txt", "", request);
    REQUIRE_FALSE(told.answer.conflict.empty());
    // The want and a kept chile are in the minimal infeasible subset; the salt is not.
    const auto says = [&](const std::string& word) {
        return std::any_of(told.answer.conflict.begin(), told.answer.conflict.end(),
                           [&](const Reason& demand) { return in_full(demand).find(word) != std::string::npos; });
    };
    CHECK(says("heat<=0.5"));
    CHECK((says("serrano") || says("jalape")));
    CHECK_FALSE(told.answer.would_give.empty());
}

namespace milder_stand_ins_test {

using namespace scenario;

Variant milder(const std::string& chile, const std::string& list) {
    AdaptRequest request;
    request.wants = {"milder"};
    const auto answer =
        answer_to("Link (invented)\n2000 g pork shoulder\n400 g pork backfat\n40 g salt\n15 g garlic\n" + chile + "\n", list, request);
    REQUIRE_FALSE(answer.variants.empty());
    CHECK(answer.variants.front().wants.front().met);
    return answer.variants.front();
}

TEST_CASE("milder: of what stands in for a missing chile as much comes in as the asked heat leaves room for") {
    CHECK(grams_in(milder("20 g habanero, minced", "serrano 500 g\nno habanero\n"), "serrano") > 60);
    CHECK(grams_in(milder("80 g jalapeño, minced", "serrano 200 g\nno jalapeño\n"), "serrano") == Approx(20).margin(8));
    CHECK(grams_in(milder("12 g cayenne", "hot paprika 100 g\nno cayenne\n"), "hot-paprika") > 20);
}

}  // namespace milder_stand_ins_test
