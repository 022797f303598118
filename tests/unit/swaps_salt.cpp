// What stands in with salt in it, or without, has the salt of the batch closed whole, with plain salt.
#include <algorithm>
#include <cmath>

#include "standin/engine.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace swaps_salt_test {

const Engine& engine() {
    static const Engine opened_once = opened(64);
    return opened_once;
}

std::vector<StandIn> all_for(const Formula& mass, const char* line) { return engine().swaps(mass, line, {.top = 60})->stand_ins; }

double salt_of_meat(const Formula& formula) { return nominal_state(formula, nominal()).properties[Property::salt_pct_of_meat]; }
double salt_of_all(const Formula& formula) { return nominal_state(formula, nominal()).properties[Property::salt_pct]; }

const StandIn* found(const std::vector<StandIn>& all, const char* id) {
    const auto at = std::find_if(all.begin(), all.end(), [&](const StandIn& s) { return s.ingredient == id; });
    return at == all.end() ? nullptr : &*at;
}

TEST_CASE("swaps: salty fat takes the plain salt down by all that it brings", "[swaps]") {
    const Formula mass = formula({line("venison", 800), line("pork-backfat", 200), line("table-salt", 18)});
    const auto all = all_for(mass, "pork-backfat");
    const StandIn* salty = found(all, "salt-pork");
    REQUIRE(salty);
    CHECK(std::abs(salt_of_meat(salty->formula) - salt_of_meat(mass)) < 0.06);
}

TEST_CASE("swaps: in place of salty crumbs plain salt makes up what went with them, and no more", "[swaps]") {
    const Formula mass = formula({line("pork-shoulder", 1000), line("breadcrumb", 60), line("water", 80), line("table-salt", 18)});
    for (const auto& s : all_for(mass, "breadcrumb")) {
        if (s.partner) continue;
        INFO(s.ingredient);
        CHECK(std::abs(salt_of_meat(s.formula) - salt_of_meat(mass)) < 0.07);
    }
}

TEST_CASE("swaps: of salt that a paste or sauce stands in for in part, so much stays as that does not bring", "[swaps]") {
    const Formula mass = formula({line("chicken-thigh", 1000), line("table-salt", 18), line("scallion", 20)});
    const auto all = all_for(mass, "table-salt");
    int seen = 0;
    for (const char* id : {"miso", "doenjang", "coconut-aminos", "oyster-sauce", "soy-sauce", "fish-sauce", "tamari"}) {
        const StandIn* s = found(all, id);
        if (!s) continue;
        ++seen;
        INFO(id);
        CHECK(std::abs(salt_of_meat(s->formula) - salt_of_meat(mass)) < 0.08);
        CHECK(s->line_left > 11);
    }
    CHECK(seen >= 4);
}

TEST_CASE("swaps: a reviewed near relative is not far off for its aroma alone", "[swaps]") {
    const Formula mass = formula({line("pork-shoulder", 1000), line("white-wine-vinegar", 50), line("table-salt", 18), line("garlic", 5)});
    const auto all = all_for(mass, "white-wine-vinegar");
    for (const char* id : {"malt-vinegar", "distilled-vinegar", "sherry-vinegar"}) {
        const StandIn* s = found(all, id);
        INFO(id);
        REQUIRE(s);
        CHECK(s->nearness <= Nearness::differs);
    }
    for (const auto& s : all)
        if (s.closeness > 0.5) CHECK(s.distance < 5);
}

TEST_CASE("swaps: what is weighed up to the most of it is not told to be over it", "[swaps]") {
    const Formula mass = formula({line("pork-shoulder", 1000), line("white-wine-vinegar", 50), line("table-salt", 18), line("garlic", 5)});
    const auto all = all_for(mass, "white-wine-vinegar");
    const StandIn* verjuice = found(all, "verjuice");
    REQUIRE(verjuice);
    for (const auto& caution : verjuice->cautions) CHECK(caution.id != "over-most");
}

}  // namespace swaps_salt_test
