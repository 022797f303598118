// What must hold of every prediction, on random formulas.
#include <algorithm>
#include <cmath>

#include "support/cases.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace predict_test {

constexpr std::uint64_t cases = 40;

Engine& engine() {
    static Engine opened = [] {
        Options options;
        options.draws = 64;
        return std::move(*Engine::open(options));
    }();
    return opened;
}

TEST_CASE("random formulas: bands are ordered and finite, chances add up, shares too") {
    for (std::uint64_t n = 0; n < cases; ++n) {
        CAPTURE(n);
        const Prediction p = engine().predict(CaseMaker(n).formula()).value();
        for_each_property([&](Property property) {
            const Band& band = p.properties[property];
            CAPTURE(info(property).key, band.low, band.mid, band.high);
            CHECK((std::isfinite(band.low) && std::isfinite(band.mid) && std::isfinite(band.high)));
            CHECK(band.low <= band.mid);
            CHECK(band.mid <= band.high);
        });
        for (const Property property :
             {Property::salt_pct, Property::fat_pct, Property::protein_pct, Property::water_pct, Property::heat_mg_kg,
              Property::chlorophyll_mg_kg, Property::bind, Property::firmness, Property::cooked_water_pct, Property::cooked_fat_pct})
            CHECK(p.properties[property].low >= 0);
        for (const Property property : {Property::bind, Property::firmness, Property::cook_loss_pct})
            CHECK(p.properties[property].high <= 100);
        CAPTURE(p.properties[Property::ph].low, p.properties[Property::ph].high);
        CHECK((p.properties[Property::ph].low > 2.5 && p.properties[Property::ph].high < 8));
        CHECK((p.properties[Property::water_activity].low > 0.8 && p.properties[Property::water_activity].high <= 1));
        double chances = 0, shares = 0;
        for (const double c : p.heat_chances) chances += c;
        for (const auto& l : p.lines) shares += l.share;
        CHECK(chances == Approx(1).margin(1e-9));
        CHECK(shares == Approx(1).margin(1e-9));
        CHECK_FALSE(p.label.empty());
        CHECK_FALSE(p.cautions.empty());
    }
}

TEST_CASE("random formulas: order of lines and a factor on all weights change nothing; JSON and back neither") {
    for (std::uint64_t n = 0; n < cases; ++n) {
        CAPTURE(n);
        const Formula base = CaseMaker(n).formula();
        const Prediction first = engine().predict(base).value();
        Formula turned = base, half = base;
        std::rotate(turned.lines.begin(), turned.lines.begin() + 1, turned.lines.end());
        for (auto& l : half.lines) {
            l.grams = scaled(l.grams, 0.5);
            l.count = pods_of(base.lines[static_cast<std::size_t>(&l - half.lines.data())], *knowledge().ingredient(l.ingredient));
        }
        const auto read = engine().read_formula(engine().formula_json(base), "again");
        if (!read) FAIL(read.error().message);
        for (const Formula* other : std::initializer_list<const Formula*>{&turned, &half, &*read}) {
            const Prediction p = engine().predict(*other).value();
            for_each_property([&](Property property) {
                CAPTURE(info(property).key, other == &turned, other == &half);
                CHECK(p.properties[property].mid == Approx(first.properties[property].mid).epsilon(1e-6).margin(1e-7));
                CHECK(p.properties[property].high == Approx(first.properties[property].high).epsilon(1e-6).margin(1e-7));
            });
        }
    }
}

TEST_CASE("random formulas: plain text and back is the same formula") {
    std::size_t lines = 0;
    for (std::uint64_t n = 0; n < cases; ++n) {
        const Formula base = CaseMaker(n).formula();
        const std::string text = engine().formula_text(base);
        const auto read = engine().read_formula(text, "again");
        CAPTURE(n, text);
        if (!read) {
            FAIL_CHECK(read.error().where + " " + read.error().message);
            continue;
        }
        REQUIRE(read->lines.size() == base.lines.size());
        for (std::size_t l = 0; l < base.lines.size(); ++l) {
            ++lines;
            CHECK(read->lines[l].ingredient == base.lines[l].ingredient);
            CHECK(read->lines[l].prepared == base.lines[l].prepared);
            CHECK(read->lines[l].grams.mid == Approx(base.lines[l].grams.mid).epsilon(1e-3));
        }
    }
    CHECK(lines > 150);
}

TEST_CASE("random formulas: more salt never means less, more vinegar never a higher pH, more chile never less heat") {
    for (std::uint64_t n = 0; n < cases; ++n) {
        CAPTURE(n);
        const Formula base = CaseMaker(n).formula();
        const State before = nominal_state(base, nominal());
        const auto with = [&](const char* id, double grams) {
            Formula more = base;
            more.lines.push_back(line(id, grams));
            return nominal_state(more, nominal());
        };
        CHECK(with("table-salt", 5).properties[Property::salt_pct] > before.properties[Property::salt_pct]);
        CHECK(with("table-salt", 5).properties[Property::water_activity] < before.properties[Property::water_activity]);
        constexpr double as_sour_as_vinegar = 3.2;  // its own pH; what is below that is diluted by it
        if (before.properties[Property::ph] > as_sour_as_vinegar)
            CHECK(with("cider-vinegar", 40).properties[Property::ph] < before.properties[Property::ph]);
        CHECK(with("cider-vinegar", 40).properties[Property::sourness_mmol_kg] > before.properties[Property::sourness_mmol_kg]);
        CHECK(with("habanero", 40).properties[Property::heat_mg_kg] > before.properties[Property::heat_mg_kg]);
        CHECK(with("pork-backfat", 200).properties[Property::fat_pct] > before.properties[Property::fat_pct]);
        CHECK(with("water", 100).properties[Property::water_pct] > before.properties[Property::water_pct]);
    }
}

}  // namespace predict_test
