#include "evaluate/why.hpp"

#include <algorithm>

#include "evaluate/unknown_quantity.hpp"
#include "knowledge/index/effects.hpp"
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

TEST_CASE("why answers of the colour: how light, red and yellow it is, raw and cooked") {
    static Engine engine = Engine::open({}).value();
    for (std::size_t p = 0; p < colour_part_count; ++p) {
        const auto part = static_cast<ColourPart>(p);
        const auto a = engine.why(sour(), part).value();
        CAPTURE(info(part).key);
        CHECK(a.colour == part);
        CHECK(a.asked().key == info(part).key);
        CHECK_FALSE(a.unknowns.empty());
        CHECK_FALSE(a.lines.empty());
        CHECK_FALSE(a.prediction.cautions.empty());
        const auto& told = part < ColourPart::lightness ? a.prediction.raw : a.prediction.cooked;
        const Band Lab_bands[] = {told.L, told.a, told.b};
        CHECK(a.band.low == Approx(Lab_bands[p % 3].low).margin(1e-6));
        CHECK(a.band.high == Approx(Lab_bands[p % 3].high).margin(1e-6));
    }
    CHECK(colour_part_of("colour") == ColourPart::lightness);
    CHECK(colour_part_of("Raw redness") == ColourPart::raw_redness);
    CHECK_FALSE(colour_part_of("heat"));
}

TEST_CASE("a reading of the colour halves the band of the lightness; three weighings together that of cooked fat and water") {
    static Engine engine = Engine::open({}).value();
    for (const auto part : {ColourPart::raw_lightness, ColourPart::lightness}) {
        const auto a = engine.why(sour(), part).value();
        CAPTURE(info(part).key);
        REQUIRE_FALSE(a.measurements.empty());
        CHECK(a.measurements.front().narrower > 0.5);
        CHECK(a.measurements.front().line.find("lightness: ") != std::string::npos);
    }
    Formula fried = sour();
    fried.process.cook = Cook::pan;
    for (const auto property : {Property::cooked_fat_pct, Property::cooked_water_pct}) {
        const auto a = engine.why(fried, property).value();
        CAPTURE(info(property).key);
        REQUIRE(a.together);
        CAPTURE(a.together->lines.size(), a.together->narrower);
        CHECK(a.together->narrower > a.measurements.front().narrower);
        CHECK(a.together->narrower >= 0.45);
        CHECK(a.together->lines.size() == a.together->what.size());
    }
}

TEST_CASE("several readings, written into a kitchen, leave about the band that they are told to leave", "[long]") {
    static Engine engine = Engine::open({}).value();
    Formula fried = sour();
    fried.process.cook = Cook::pan;
    std::size_t told = 0;
    for_each_property([&](Property property) {
        const auto a = engine.why(fried, property).value();
        if (!a.together) return;
        ++told;
        std::string lines;
        for (const auto& line : a.together->lines) lines += line + "\n";
        CAPTURE(info(property).key, lines, a.together->known.low, a.together->known.high);
        const auto kitchen = engine.read_kitchen(lines, "kitchen.txt");
        REQUIRE(kitchen);
        const Band written = engine.with_kitchen(*kitchen).value().predict(fried).value().properties[property];
        CAPTURE(written.low, written.high);
        CHECK(a.together->known.mid >= a.band.low);
        CHECK(a.together->known.mid <= a.band.high);
        // The line is rounded, and a kitchen's pH is of all that animal's cuts.
        CHECK(width(written) <= 1.3 * width(a.together->known));
        CHECK(width(written) >= 0.7 * width(a.together->known));
    });
    CHECK(told > 3);
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
