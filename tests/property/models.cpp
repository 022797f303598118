// What must hold of the models together on any batch: nothing negative, nothing that jumps, and directions as the literature has them.
#include <algorithm>
#include <cmath>

#include "support/cases.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace models_test {

constexpr std::uint64_t cases = 60;

struct Made {
    Material total;
    ProcessState process;
};

Made made(std::uint64_t number) {
    const Formula formula = CaseMaker(number).formula();
    const NominalBatch batch(formula, nominal());
    return {batch.total(), batch.process()};
}

State state(const Material& total, const ProcessState& process) { return nominal().models().state(total, process); }

double value(const Made& m, Property property, void (*change)(ProcessState&)) {
    ProcessState process = m.process;
    change(process);
    return state(m.total, process).properties[property];
}

TEST_CASE("no property of any batch is negative but the colour coordinates") {
    for (std::uint64_t n = 0; n < cases; ++n) {
        const Made m = made(n);
        const State s = state(m.total, m.process);
        for_each_property([&](Property property) {
            CAPTURE(n, info(property).key);
            const double v = s.properties[property];
            CHECK(std::isfinite(v));
            if (property != Property::greenness) CHECK(v >= 0);
        });
        const auto& p = s.properties;
        CHECK(p[Property::cooked_water_pct] + p[Property::cooked_fat_pct] + p[Property::cooked_protein_pct] <= 100.0001);
        CHECK(p[Property::water_pct] + p[Property::fat_pct] + p[Property::protein_pct] <= 100.0001);
        CHECK(p[Property::cook_loss_pct] <= p[Property::water_pct] + p[Property::fat_pct]);
    }
}

TEST_CASE("a hair more of any amount, or of any part of the making, moves no property by more than a little") {
    constexpr double hair = 1e-6, little = 1e-3;
    double ProcessState::*const parts[] = {&ProcessState::plate_mm, &ProcessState::mixing_min, &ProcessState::mixed_at_c,
                                           &ProcessState::rest_h,   &ProcessState::rest_at_c,  &ProcessState::core_c};
    for (std::uint64_t n = 0; n < cases; ++n) {
        const Formula formula = CaseMaker(n).formula();
        const NominalBatch batch(formula, nominal());
        const State before = batch.state();
        const auto near = [&](const State& after) {
            for_each_property([&](Property property) {
                CAPTURE(n, info(property).key);
                const double was = before.properties[property];
                CHECK(std::abs(after.properties[property] - was) < little * (1 + std::abs(was)));
            });
        };
        for (const auto& line : formula.lines) {
            Material total = batch.total();
            total.add(nominal().unit(line), hair * line.grams.mid);
            CAPTURE(line.ingredient);
            near(state(total, batch.process()));
        }
        for (const auto part : parts) {
            ProcessState process = batch.process();
            process.*part += hair * (1 + std::abs(process.*part));
            near(state(batch.total(), process));
        }
    }
}

TEST_CASE("warmer mixing never binds better, longer mixing never worse") {
    for (std::uint64_t n = 0; n < cases; ++n) {
        const Made m = made(n);
        CAPTURE(n);
        CHECK(value(m, Property::bind, [](ProcessState& p) { p.mixed_at_c = 14; }) <=
              value(m, Property::bind, [](ProcessState& p) { p.mixed_at_c = 3; }));
        CHECK(value(m, Property::bind, [](ProcessState& p) { p.mixing_min = 5; }) >=
              value(m, Property::bind, [](ProcessState& p) { p.mixing_min = 1; }));
        CHECK(value(m, Property::bind, [](ProcessState& p) { p.order = Order::salt_first; }) >=
              value(m, Property::bind, [](ProcessState& p) { p.order = Order::acid_first; }));
    }
}

TEST_CASE("a hotter core never loses less, and a longer or warmer rest never leaves more green") {
    for (std::uint64_t n = 0; n < cases; ++n) {
        const Made m = made(n);
        CAPTURE(n);
        CHECK(value(m, Property::cook_loss_pct, [](ProcessState& p) { p.core_c = 85; }) >=
              value(m, Property::cook_loss_pct, [](ProcessState& p) { p.core_c = 68; }));
        const double fresh = value(m, Property::hue_deg, [](ProcessState& p) { p.rest_h = 0; });
        const bool green = fresh > 100;
        if (!green) continue;
        const auto greenness = [&](void (*change)(ProcessState&)) { return value(m, Property::greenness, change); };
        CHECK(greenness([](ProcessState& p) { p.rest_h = 72; }) <= greenness([](ProcessState& p) { p.rest_h = 12; }) + 1e-9);
        CHECK(greenness([](ProcessState& p) { p.rest_at_c = 10; }) <= greenness([](ProcessState& p) { p.rest_at_c = 1; }) + 1e-9);
    }
}

}  // namespace models_test
