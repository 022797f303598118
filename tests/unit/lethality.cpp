// Lethality: the integral, its cut-off and cap, the poultry table and the heating estimate.
#include "models/lethality.hpp"

#include <array>
#include <cmath>
#include <random>

#include "support/catch.hpp"
#include "support/parameters.hpp"

using namespace standin;

namespace lethality_test {

LethalityParameters middle() { return middle_parameters(lethality_bindings()); }

TEST_CASE("straight ramps: the closed form") {
    constexpr double z = 5.562;
    const auto ramp = [](double per_min) { return std::array<CorePoint, 2>{{{0, 54.4}, {(71.111 - 54.4) / per_min * 60, 71.111}}}; };
    CHECK(f70_s(ramp(1), z, 0) == Approx(229.3).epsilon(1e-3));
    CHECK(f70_s(ramp(2), z, 0) == Approx(114.67).epsilon(1e-3));
    CHECK(f70_s(ramp(5), z, 0) == Approx(45.87).epsilon(1e-3));
    CHECK(f70_s(ramp(1), z, 60) == Approx(227.26).epsilon(1e-3));
    CHECK(f70_s(ramp(2), z, 60) == Approx(113.63).epsilon(1e-3));
    CHECK(f70_s(ramp(5), z, 60) == Approx(45.45).epsilon(1e-3));
}

TEST_CASE("cutting a curve into more points changes nothing, and cooling counts like heating") {
    std::mt19937_64 random(3);
    std::uniform_real_distribution<double> unit(0, 1);
    for (int i = 0; i < 500; ++i) {
        const CorePoint a{10, 40 + 40 * unit(random)}, b{10 + 300 * unit(random), 40 + 40 * unit(random)};
        const double s = unit(random);
        const CorePoint between{a.time_s + s * (b.time_s - a.time_s), a.temperature_c + s * (b.temperature_c - a.temperature_c)};
        const std::array<CorePoint, 2> whole{{a, b}}, back{{{a.time_s, b.temperature_c}, {b.time_s, a.temperature_c}}};
        const std::array<CorePoint, 3> cut{{a, between, b}};
        const double f = f70_s(whole, 5.562, 60);
        CHECK(f70_s(cut, 5.562, 60) == Approx(f).epsilon(1e-9).margin(1e-12));
        CHECK(f70_s(back, 5.562, 60) == Approx(f).epsilon(1e-9).margin(1e-12));
        CHECK(f >= 0);
    }
}

TEST_CASE("longer or hotter never kills less, the cap holds, and cold time does not count") {
    const auto p = middle();
    const auto hold = [&](double c, double s) { return log_reductions(std::array<CorePoint, 2>{{{0, c}, {s, c}}}, p); };
    CHECK(hold(59.9, 1e6) == 0);
    CHECK(hold(70, 1e6) == p.cap_logs);
    CHECK(hold(66, 20) == Approx(2 * hold(66, 10)));
    for (double c = 60; c < 75; c += 0.5) CHECK(hold(c + 0.5, 1) >= hold(c, 1));
    CHECK(log_reductions({}, p) == 0);
    CHECK(hold(70, 1.0) < 1);  // one second at 158 F is not "instant"
}

TEST_CASE("poultry: rows come back, between rows the logarithm, outside nothing") {
    const auto p = middle();
    const auto f = [](double fahrenheit) { return (fahrenheit - 32) / 1.8; };
    const auto chicken = PoultryColumn::chicken_lean;
    CHECK(poultry_hold_s(chicken, f(140), p).value() == Approx(1512));
    CHECK(poultry_hold_s(chicken, f(160), p).value() == Approx(13.7));
    CHECK(poultry_hold_s(chicken, f(147.5), p).value() == Approx(std::sqrt(504.0 * 162)));
    CHECK_FALSE(poultry_hold_s(chicken, f(139.9), p));
    CHECK_FALSE(poultry_hold_s(chicken, f(160.1), p));
    CHECK_FALSE(poultry_hold_s(PoultryColumn::poultry_12, f(150), p));
    CHECK(poultry_hold_s(PoultryColumn::chicken_5, f(162), p).value() == Approx(9.6));
    for (auto column : {PoultryColumn::chicken_lean, PoultryColumn::turkey_lean, PoultryColumn::chicken_5, PoultryColumn::poultry_12}) {
        double before = 1e9;
        for (double t = f(136); t <= f(162); t += 0.1)
            if (const auto seconds = poultry_hold_s(column, t, p)) {
                CHECK(*seconds < before);
                before = *seconds;
            }
        CHECK(before < 1e9);
    }
}

TEST_CASE("the poultry column errs to the safe side and knows its end") {
    CHECK(poultry_column(Species::chicken, 0.8) == PoultryColumn::chicken_lean);
    CHECK(poultry_column(Species::chicken, 3) == PoultryColumn::chicken_5);
    CHECK(poultry_column(Species::chicken, 8) == PoultryColumn::poultry_12);
    CHECK_FALSE(poultry_column(Species::chicken, 20));
    CHECK(poultry_column(Species::turkey, 1) == PoultryColumn::turkey_lean);
    CHECK_FALSE(poultry_column(Species::turkey, 8));
    CHECK_FALSE(poultry_column(Species::duck, 1));
    CHECK_FALSE(poultry_column(Species::pork, 1));
}

TEST_CASE("the estimated core rises from its start to its end, slower in a thicker link") {
    const auto p = middle();
    for (Cook method : {Cook::pan, Cook::grill, Cook::oven, Cook::poach, Cook::loose}) {
        double before = 0;
        for (double mm : {20.0, 26.0, 32.0, 40.0}) {
            const auto curve = estimated_core_curve(mm, 4, 71, method, p);
            REQUIRE(curve.size() > 2);
            CHECK(curve.front().temperature_c == Approx(4));
            CHECK(curve.back().temperature_c == Approx(71));
            CHECK(cylinder_core_c(curve.back().time_s, mm, 4, method, p) == Approx(71));
            for (std::size_t i = 1; i < curve.size(); ++i) {
                CHECK(curve[i].temperature_c >= curve[i - 1].temperature_c - 1e-9);
                CHECK(curve[i].time_s >= curve[i - 1].time_s);
            }
            CHECK(curve.back().time_s > before);
            before = curve.back().time_s;
        }
        CHECK(before < 3600);
    }
    CHECK(estimated_core_curve(32, 4, 85, Cook::poach, p).empty());
    CHECK(cylinder_core_c(0, 32, 4, Cook::oven, p) == Approx(4));
}

}  // namespace lethality_test
