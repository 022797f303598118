// From a loose, vinegar-sharp mass to one that binds.
#include <algorithm>
#include <cmath>

#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;

TEST_CASE("firmer: care and half of the acid come first, and less wet paste with more of the binder after it") {
    AdaptRequest request;
    request.wants = {"firmer"};
    const auto told = scenario::tell("firmer/formula.txt", "", request);
    REQUIRE_FALSE(told.answer.variants.empty());
    CHECK(told.answer.conflict.empty());
    const auto& base = told.answer.base;
    const auto& best = told.answer.variants.front();

    // Loose before, bound after.
    CHECK(base.properties[Property::bind].mid < 25);
    CHECK(best.prediction.properties[Property::bind].mid > base.properties[Property::bind].mid + 20);
    CHECK(best.differences[Property::bind].low > 0);
    REQUIRE(told.answer.variants.size() >= 2);
    const auto& whole = told.answer.variants[1];
    CHECK(whole.prediction.properties[Property::bind].mid > 45);
    for (const auto& want : whole.wants) CHECK(want.met);

    // The three levers of common practice.
    const auto grams = [](const Formula& formula, const char* id) {
        const auto* line = scenario::line_of(formula, id);
        return line ? line->grams.mid : 0.0;
    };
    CHECK(whole.prediction.properties[Property::sourness_mmol_kg].mid < 0.7 * base.properties[Property::sourness_mmol_kg].mid);
    CHECK(grams(best.formula, "cider-vinegar") < grams(told.formula, "cider-vinegar"));
    const auto wet = [&](const Formula& f) { return grams(f, "tomatillo") + grams(f, "white-wine") + grams(f, "cilantro"); };
    CHECK(wet(whole.formula) < wet(told.formula));
    CHECK(scenario::has_edit(best, EditKind::add));

    // The making: salt and lean first, acid last, cold.
    CHECK(best.formula.process.order == Order::salt_first);
    CHECK(best.formula.process.mixed_at_c.value() <= 4);
    CHECK(scenario::has_edit(best, EditKind::process));

    // What it costs and what gives some of it back.
    CHECK(best.table.find("less sharp") != std::string::npos);
    REQUIRE(best.gives_back.size() >= 2);
    const auto tells = [&](const char* words) {
        return std::any_of(best.gives_back.begin(), best.gives_back.end(),
                           [&](const Reason& r) { return in_full(r).find(words) != std::string::npos; });
    };
    CHECK(tells("zest"));
    CHECK(tells("brush it on after cooking"));
}

TEST_CASE("firmer: what a maker cannot spare is named when it stands in the way") {
    AdaptRequest request;
    request.wants = {"bind>=95"};
    const auto told = scenario::tell("firmer/formula.txt", "", request);
    CHECK_FALSE(told.answer.conflict.empty());
}
