#include "evaluate/why.hpp"

#include <algorithm>

#include "evaluate/unknown_quantity.hpp"
#include "knowledge/effects.hpp"
#include "standin/narrate.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace why_test {

Formula sour() {
    return formula({line("pork-shoulder", 2000), line("spinach", 200, {"blanched"}), line("cider-vinegar", 60), line("table-salt", 34),
                    line("serrano", 60)});
}

WhyAnswer why(Property property) {
    static Engine engine = Engine::open({}).value();
    return engine.why(sour(), property).value();
}

const LineLever* lever_of(const WhyAnswer& a, std::size_t line) {
    const auto found = std::find_if(a.lines.begin(), a.lines.end(), [&](const LineLever& l) { return l.line == line; });
    return found == a.lines.end() ? nullptr : &*found;
}

TEST_CASE("acid lowers the pH, meat holds it up, and the meat's own pH is what makes the band wide") {
    const auto a = why(Property::ph);
    REQUIRE(lever_of(a, 2));
    REQUIRE(lever_of(a, 0));
    CHECK(lever_of(a, 2)->change.high < 0);
    CHECK(lever_of(a, 0)->change.low > 0);
    REQUIRE_FALSE(a.unknowns.empty());
    CHECK(a.unknowns.front().what == "the pH of pork");
    CHECK(a.unknowns.front().kitchen);
    CHECK(width(a.unknowns.front().known) < 0.8 * width(a.band));
    CHECK(!a.prediction.cautions.empty());
}

TEST_CASE("what the maker can taste widens the heat") {
    const auto a = why(Property::heat_mg_kg);
    REQUIRE_FALSE(a.unknowns.empty());
    CHECK(a.unknowns.front().what.find("serrano") != std::string::npos);
    CHECK(a.lines.front().line == 4);
    CHECK(a.lines.front().change.mid > 0);
}

TEST_CASE("shares are of one whole, the widest first, and each would narrow the band") {
    for (const auto property : {Property::ph, Property::bind, Property::cook_loss_pct, Property::greenness, Property::salt_pct}) {
        const auto a = why(property);
        double sum = 0, before = 1;
        for (const auto& unknown : a.unknowns) {
            CHECK(unknown.share <= before);
            CHECK(width(unknown.known) < width(a.band));
            before = unknown.share;
            sum += unknown.share;
        }
        CHECK(sum < 1.05);
    }
}

TEST_CASE("every uncertain quantity of a formula has words of its own") {
    const Sampled sampled(knowledge(), 16, 1);
    for (const auto& ingredient : knowledge().records().ingredients) {
        Line whole = line(ingredient.id, 100);
        for (const auto& preparation : knowledge().records().preparations)
            if (effect_on(preparation, ingredient.tissue)) whole.prepared.push_back({preparation.id, std::nullopt});
        sampled.units(whole);
        sampled.units(line(ingredient.id, 100));
    }
    sampled.processes({});
    std::size_t seen = 0;
    for (const auto& name : sampled.uncertain()) {
        const Reason reason = quantity_of(name, knowledge()).reason;
        const std::string what = in_full(reason);
        CAPTURE(name, what);
        CHECK_FALSE(how_to_know(reason).empty());
        CHECK(what.find('%') == std::string::npos);
        // What has no words of its own shows its bare name; only constants of the models may.
        const bool bare = what.find(name.substr(name.find(' ') + 1)) != std::string::npos && what.find(": ") != std::string::npos;
        CHECK_FALSE(bare);
        if (what.rfind("the model", 0) == 0) CHECK(knowledge().has_parameter(name));
        ++seen;
    }
    CHECK(seen > 1000);
}

}  // namespace why_test
