// Cook loss: mass is kept, nothing goes below zero, directions are right.
#include "models/cooking.hpp"

#include <array>
#include <cmath>
#include <random>

#include "support/catch.hpp"
#include "support/parameters.hpp"

using namespace standin;

namespace cooking_test {

CookingParameters middle() { return middle_parameters(cooking_bindings()); }

constexpr std::array methods{Cook::pan, Cook::grill, Cook::oven, Cook::poach, Cook::loose};

Material sausage(double paste = 0) {
    const double meat = 982 - paste;
    Material m;
    m[Amount::mass] = 1000;
    m[Amount::meat] = meat;
    m[Amount::water] = 0.61 * meat + 0.9 * paste;
    m[Amount::paste_water] = 0.9 * paste;
    m[Amount::protein] = m[Amount::meat_protein] = 0.169 * meat;
    m[Amount::fat] = 0.21 * meat;
    m[Amount::salt] = 18;
    return m;
}

double loss(const Material& m, Cook method = Cook::pan, double core = 71, double ph = 5.7) {
    return batch_cook(m, {ph, method, core}, middle()).loss_pct;
}

TEST_CASE("mass, water, fat and protein are conserved over random batches") {
    std::mt19937_64 random(11);
    std::uniform_real_distribution<double> unit(0, 1);
    const auto p = middle();
    for (int i = 0; i < 4000; ++i) {
        Material m;
        const auto draw = [&] { return unit(random) < 0.25 ? 0.0 : 400 * unit(random); };
        m[Amount::water] = draw();
        m[Amount::fat] = draw();
        m[Amount::protein] = draw();
        m[Amount::meat_protein] = m[Amount::protein] * unit(random);
        m[Amount::salt] = 0.1 * draw();
        m[Amount::mass] = m[Amount::water] + m[Amount::fat] + m[Amount::protein] + m[Amount::salt];
        m[Amount::paste_water] = m[Amount::water] * unit(random);
        m[Amount::held_hot] = draw();
        m[Amount::held_cold] = draw();
        m[Amount::held_fat] = draw();
        const auto c = batch_cook(m, {4 + 4 * unit(random), methods[static_cast<std::size_t>(i) % 5], 40 + 60 * unit(random)}, p);
        REQUIRE(c.water_lost_pct >= 0);
        REQUIRE(c.fat_lost_pct >= 0);
        REQUIRE(c.yield >= 0);
        REQUIRE(c.loss_pct == Approx(100 * (1 - c.yield)).margin(1e-9));
        if (m[Amount::mass] <= 0 || c.yield <= 1e-9) continue;
        REQUIRE(c.cooked_water_pct * c.yield + c.water_lost_pct == Approx(100 * m[Amount::water] / m[Amount::mass]).margin(1e-9));
        REQUIRE(c.cooked_fat_pct * c.yield + c.fat_lost_pct == Approx(100 * m[Amount::fat] / m[Amount::mass]).margin(1e-9));
        REQUIRE(c.cooked_protein_pct * c.yield == Approx(100 * m[Amount::protein] / m[Amount::mass]).margin(1e-9));
        REQUIRE(c.cooked_water_pct + c.cooked_fat_pct + c.cooked_protein_pct + c.cooked_salt_pct == Approx(100).margin(1e-7));
    }
}

TEST_CASE("nothing cooked is nothing lost") {
    const auto c = batch_cook(Material{}, {5.7, Cook::pan, 71}, middle());
    CHECK(c.loss_pct == 0);
    CHECK(c.yield == 1);
}

TEST_CASE("hotter, sourer, less salted masses lose more; so do wet pastes") {
    const Material m = sausage();
    for (double core = 63; core < 95; core += 2) CHECK(loss(m, Cook::pan, core + 2) > loss(m, Cook::pan, core));
    CHECK(loss(m, Cook::pan, 50) == loss(m, Cook::pan, 55));
    for (double ph = 4.6; ph < 6.6; ph += 0.1) CHECK(loss(m, Cook::pan, 71, ph + 0.1) < loss(m, Cook::pan, 71, ph));
    Material bland = m;
    bland[Amount::salt] = 0;
    CHECK(loss(bland) > loss(m));
    for (double paste = 0; paste < 300; paste += 20) CHECK(loss(sausage(paste + 20)) > loss(sausage(paste)));
}

TEST_CASE("methods keep their order, and binders hold water and fat") {
    const Material m = sausage(120);
    CHECK(loss(m, Cook::poach) < loss(m, Cook::pan));
    CHECK(loss(m, Cook::pan) < loss(m, Cook::grill));
    Material bound = m;
    double before = loss(m);
    for (int i = 0; i < 30; ++i) {
        bound[Amount::held_hot] += 5;
        CHECK(loss(bound) < before);
        before = loss(bound);
    }
    Material fat_bound = m;
    fat_bound[Amount::held_fat] = 30;
    CHECK(batch_cook(fat_bound, {5.7, Cook::grill, 71}, middle()).fat_lost_pct <
          batch_cook(m, {5.7, Cook::grill, 71}, middle()).fat_lost_pct);
    Material jelly = m;
    jelly[Amount::held_chilled] = 60;
    CHECK(loss(jelly) == loss(m));
}

TEST_CASE("no corner where the water runs out") {
    double last = 0, last_slope = 0;
    for (int i = 0; i < 800; ++i) {
        Material m = sausage();
        m[Amount::water] = i + 1.0;
        const double lost = batch_cook(m, {5.7, Cook::pan, 71}, middle()).water_lost_pct;
        const double slope = lost - last;
        if (i > 1) {
            CHECK(std::abs(slope - last_slope) < 0.002);
        }
        last = lost;
        last_slope = slope;
    }
}

TEST_CASE("in water the loss follows the water and the salt, and grows as the core gets hotter") {
    const Material m = sausage();
    Material bland = m;
    bland[Amount::salt] = 0;
    CHECK(loss(bland, Cook::poach) > loss(m, Cook::poach) + 5);
    for (double core = 63; core < 95; core += 2) CHECK(loss(m, Cook::poach, core + 2) > loss(m, Cook::poach, core));
    // A braise: plain meat loses more than half as much again as at 71 C.
    CHECK(loss(bland, Cook::poach, 92) > 1.5 * loss(bland, Cook::poach, 71));
    Material sour = m;
    CHECK(batch_cook(sour, {5.2, Cook::poach, 71}, middle()).loss_pct > loss(m, Cook::poach));
    Material bound = m;
    bound[Amount::held_hot] = 45;
    CHECK(loss(bound, Cook::poach) < loss(m, Cook::poach));
}

TEST_CASE("a lot that keeps less keeps less plain still, and meat with more water of its own keeps more") {
    auto dry = middle();
    dry.lot = 0.92;
    Material m = sausage(), bland = sausage();
    bland[Amount::salt] = 0;
    const auto more = [&](const Material& batch) {
        return batch_cook(batch, {5.7, Cook::pan, 71}, dry).water_lost_pct -
               batch_cook(batch, {5.7, Cook::pan, 71}, middle()).water_lost_pct;
    };
    CHECK(more(m) > 0);
    CHECK(more(bland) > more(m));
    Material young = m;
    young[Amount::water] += 40;
    young[Amount::fat] -= 40;
    CHECK(batch_cook(young, {5.7, Cook::pan, 71}, middle()).cooked_water_pct >
          batch_cook(m, {5.7, Cook::pan, 71}, middle()).cooked_water_pct);
}

TEST_CASE("another loss is shared between water and fat, neither beyond what there is") {
    const Material m = sausage();
    const auto cook = batch_cook(m, {5.7, Cook::pan, 71}, middle());
    for (const double loss : {1.0, 10.0, 30.0, 60.0, 75.0, 80.0}) {
        const auto other = with_loss(m, cook, loss);
        CAPTURE(loss);
        CHECK(other.loss_pct == Approx(loss));
        CHECK(other.water_lost_pct <= m.share(Amount::water, 100) + 1e-9);
        CHECK(other.fat_lost_pct <= m.share(Amount::fat, 100) + 1e-9);
        CHECK(other.fat_lost_pct >= 0);
        CHECK(other.cooked_water_pct + other.cooked_fat_pct + other.cooked_protein_pct + other.cooked_salt_pct <= 100 + 1e-9);
    }
}

}  // namespace cooking_test
