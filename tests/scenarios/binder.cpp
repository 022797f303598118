// The vinegar gives way to a binder: links that hold, and brightness as far as a limit on pH lets it come back.
#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;

TEST_CASE("binder: without the vinegar the mass binds, and some brightness comes back within the pH asked for") {
    AdaptRequest request;
    request.without = {"distilled vinegar"};
    request.wants = {"firmer", "ph>=5.4"};
    const auto told = scenario::tell("binder/formula.txt", "", request);
    REQUIRE_FALSE(told.answer.variants.empty());
    CHECK(told.answer.conflict.empty());
    CHECK(told.answer.gap < 0.1);  // proved, or what is left open is nearer by less than a tenth of what a taster can tell
    const auto& base = told.answer.base.properties;
    for (const auto& v : told.answer.variants) {
        CAPTURE(v.rank);
        CHECK(scenario::line_of(v.formula, "distilled-vinegar") == nullptr);
        CHECK(v.prediction.properties[Property::ph].mid >= 5.39);
        CHECK(v.prediction.properties[Property::bind].mid >= 47);  // acid counts from the meat's own pH: half a point less than before
        for (const auto& want : v.wants) CHECK(want.met);
    }
    const auto& best = told.answer.variants.front();
    CHECK(scenario::has_edit(best, EditKind::add));
    CHECK(best.new_allergens.empty());

    // Brighter than the same batch with nothing in the vinegar's place.
    Formula bare = best.formula;
    std::erase_if(bare.lines, [&](const Line& l) { return scenario::line_of(told.formula, l.ingredient) == nullptr; });
    auto engine = scenario::expect(Engine::open({}));
    const auto without = scenario::expect(engine.predict(bare));
    const double sour = best.prediction.properties[Property::sourness_mmol_kg].mid;
    CHECK(sour > without.properties[Property::sourness_mmol_kg].mid + 1);
    CHECK(sour < 1.2 * base[Property::sourness_mmol_kg].mid);  // not noticeably sharper than it was
}
