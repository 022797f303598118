#include "knowledge/index/effects.hpp"

#include "support/catch.hpp"

using namespace standin;

namespace effects_test {

PreparationEffect effect(std::vector<Tissue> tissues, double yield) {
    PreparationEffect e;
    e.tissues = std::move(tissues);
    e.yield = {{std::nullopt, {yield, yield, yield}}};
    return e;
}

const std::vector<Point> over_time{{1.0, {0.8, 0.9, 1.0}}, {3.0, {0.4, 0.5, 0.6}}, {10.0, {0.1, 0.2, 0.3}}};

void check_band(const Band& got, const Band& expected) {
    CHECK(got.low == Approx(expected.low));
    CHECK(got.mid == Approx(expected.mid));
    CHECK(got.high == Approx(expected.high));
}

TEST_CASE("the effect for a tissue comes before the one for every tissue") {
    Preparation p;
    p.effects = {effect({}, 1), effect({Tissue::thin_leaf, Tissue::stalk}, 0.5), effect({Tissue::root}, 0.8)};
    CHECK(effect_on(p, Tissue::stalk) == &p.effects[1]);
    CHECK(effect_on(p, Tissue::root) == &p.effects[2]);
    CHECK(effect_on(p, Tissue::meat) == &p.effects[0]);
    p.effects.erase(p.effects.begin());
    CHECK(effect_on(p, Tissue::meat) == nullptr);
}

TEST_CASE("values over time are linear between their points and flat beyond") {
    check_band(at_minutes(over_time, 1), {0.8, 0.9, 1.0});
    check_band(at_minutes(over_time, 2), {0.6, 0.7, 0.8});
    check_band(at_minutes(over_time, 3), {0.4, 0.5, 0.6});
    check_band(at_minutes(over_time, 6.5), {0.25, 0.35, 0.45});
    check_band(at_minutes(over_time, 0.1), {0.8, 0.9, 1.0});
    check_band(at_minutes(over_time, 100), {0.1, 0.2, 0.3});
}

TEST_CASE("without a time the first point counts, without points nothing changes") {
    check_band(at_minutes(over_time, std::nullopt), {0.8, 0.9, 1.0});
    check_band(at_minutes({{std::nullopt, {0.3, 0.4, 0.5}}}, 7), {0.3, 0.4, 0.5});
    check_band(at_minutes({}, 7), {1, 1, 1});
}

TEST_CASE("what an effect does not speak of is kept whole") {
    PreparationEffect e = effect({}, 1);
    e.kept = {{Kept::chlorophyll, over_time}};
    check_band(kept_share(e, Kept::chlorophyll, 3), {0.4, 0.5, 0.6});
    check_band(kept_share(e, Kept::fat, 3), {1, 1, 1});
}

}  // namespace effects_test
