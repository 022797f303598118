// Water poured in beyond what a binder holds runs in the pan more than the water of a vegetable does.
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace poured_water_test {

double loss(std::vector<Line> beside) {
    Formula mass = formula({line("pork-shoulder", 1000), line("table-salt", 18)});
    for (auto& one : beside) mass.lines.push_back(std::move(one));
    mass.process.plate_mm = 6;
    mass.process.mixing_min = 3;
    mass.process.mixed_at_c = 3;
    mass.process.order = Order::salt_first;
    mass.process.core_c = 71;
    return nominal_state(mass, nominal()).properties[Property::cook_loss_pct];
}

// Were all of it lost, 120 g in a kilo would bring a loss of 22 % to 30 %: makers tell of two thirds of the way.
TEST_CASE("cooking: most of the water that is poured in without a binder runs", "[cooking]") {
    const double plain = loss({}), some = loss({line("water", 120)}), more = loss({line("water", 200)});
    const auto all_lost = [&](double water) { return (10 * plain + water) / (1000 + water) * 100; };
    CHECK(some > plain + 0.5 * (all_lost(120) - plain));
    CHECK(some < all_lost(120));
    CHECK(more > some + 1.5);
    CHECK(more < all_lost(200));
}

TEST_CASE("cooking: a binder holds poured water, and cells hold some of their own", "[cooking]") {
    CHECK(loss({line("water", 120), line("soy-protein-isolate", 30)}) < loss({line("water", 120)}) - 4);
    CHECK(loss({line("zucchini", 130)}) < loss({line("water", 120)}) - 0.5);
}

}  // namespace poured_water_test
