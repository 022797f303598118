// Acid that a firmer variant takes out of the mass comes back at the plate, weighed.
#include <algorithm>

#include "standin/engine.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace at_the_plate_test {

Engine& engine() {
    static Engine one = opened(64);
    return one;
}

const Reason* outside(const Variant& v) {
    const auto found =
        std::find_if(v.gives_back.begin(), v.gives_back.end(), [](const Reason& r) { return r.kind == ReasonKind::comes_back_outside; });
    return found == v.gives_back.end() ? nullptr : &*found;
}

TEST_CASE("so much vinegar a kilo as the firmer variant leaves out", "[plate]") {
    Formula sour = formula({line("pork-shoulder", 2000), line("spinach", 200), line("table-salt", 36), line("white-wine-vinegar", 160)});
    AdaptRequest request;
    request.wants = {"firmer"};
    const auto answer = engine().adapt(sour, request);
    REQUIRE(answer);
    REQUIRE_FALSE(answer->variants.empty());
    const Variant& v = answer->variants.front();
    const Reason* reason = outside(v);
    REQUIRE(reason);
    REQUIRE(reason->figures.size() == 2);
    CHECK(reason->figures[0].what == knowledge().ingredient("white-wine-vinegar")->names.front());
    const double lost = answer->base.properties[Property::sourness_mmol_kg].mid - v.prediction.properties[Property::sourness_mmol_kg].mid;
    const double a_gram = nominal().unit(line("white-wine-vinegar", 1))[Amount::titratable];
    CHECK(reason->figures[0].after * a_gram == Approx(lost).epsilon(0.05));
    CHECK(in_full(*reason).find("for each kilo of raw mass") != std::string::npos);

    const auto sheet = engine().sheet(v.formula, {});
    REQUIRE(sheet);
    CHECK(sheet->steps.back().id == "serve");
    CHECK(sheet->steps.back().how.find("white wine vinegar") != std::string::npos);
    const std::string saved = engine().formula_text(v.formula);
    const auto again = engine().read_formula(saved, "saved.txt");
    REQUIRE(again);
    CHECK(again->to_do == v.formula.to_do);
}

TEST_CASE("sharpness that was not wanted does not come back", "[plate]") {
    AdaptRequest rounder;
    rounder.wants = {"rounder"};
    const Formula sour = formula({line("pork-shoulder", 2000), line("lime-juice", 150), line("table-salt", 36), line("garlic", 10)});
    const auto milder = engine().adapt(sour, rounder);
    REQUIRE(milder);
    REQUIRE_FALSE(milder->variants.empty());
    for (const auto& v : milder->variants)
        for (const auto& back : v.gives_back) CHECK(back.kind == ReasonKind::acid_to_hold);  // what it still takes to hold
    // Less acid for the taste is told as that, not as a help to the bind.
    for (const auto& edit : milder->variants.front().edits)
        if (edit.line == "lime-juice" && edit.kind == EditKind::reduce) CHECK(edit.reason.kind == ReasonKind::sourness);
}

TEST_CASE("where nothing sour is poured in, the sauce is told without weights", "[plate]") {
    Reason reason;
    reason.kind = ReasonKind::comes_back_outside;
    CHECK(in_full(reason).find("brushed on after cooking") != std::string::npos);
}

}  // namespace at_the_plate_test
