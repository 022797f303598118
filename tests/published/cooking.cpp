// Cook loss against published balances.
#include "models/cooking.hpp"

#include <cmath>

#include "published/rows.hpp"
#include "support/catch.hpp"
#include "support/parameters.hpp"

using namespace standin;

namespace cooking_test {

CookingParameters middle() { return middle_parameters(cooking_bindings()); }

Material raw(double protein, double fat, double water, double salt) {
    Material m;
    m[Amount::mass] = m[Species::pork] = 100;
    m[Amount::protein] = m[Amount::meat_protein] = protein;
    m[Amount::fat] = fat;
    m[Amount::water] = water;
    m[Amount::salt] = salt;
    return m;
}

TEST_CASE("microwaved pork patties, 11-26 % fat (Jeong, Lim, Kim 2016, Tables 1 and 2)") {
    auto own = middle();
    constexpr auto oven = static_cast<std::size_t>(Cook::oven);
    own.fat_salt_scale = 1e9;  // salted, and yet they lose fat as unsalted ones do: a microwave is no oven
    own.unsalted_fat = 1;      // the curve is theirs
    own.fat_of_kind[static_cast<std::size_t>(Species::pork)] = 1;
    own.water_per_protein[oven] = 2.46;  // their patties at 75 C, inside the band of the parameter times that of pork
    own.kind[static_cast<std::size_t>(Species::pork)] = 1;
    own.own_water = 0;  // one meat: its own water is in that figure
    auto general = own;
    general.water_per_protein = middle().water_per_protein;
    general.kind = middle().kind;
    general.own_water = middle().own_water;
    for (const auto& row : published_rows("microwaved_patties.csv", 0)) {
        const auto& v = row.values;
        const Material m = raw(v[1], v[0], v[2], 1.5);
        const auto c = batch_cook(m, {5.74, Cook::oven, 75}, own);
        // Their tables do not close: 97-107 % of the protein comes back. The model keeps it all, so the loss misses by -2.9 to +5.1 points.
        CHECK(c.loss_pct == Approx(v[6]).margin(5.2));
        CHECK(c.fat_lost_pct == Approx(v[0] - v[3] * (1 - v[6] / 100)).margin(0.6));
        CHECK(c.cooked_water_pct / c.cooked_protein_pct == Approx(v[5] / v[4]).epsilon(0.02));
        CHECK(c.cooked_water_pct == Approx(v[5]).margin(1.3));
        CHECK(c.cooked_fat_pct == Approx(v[3]).margin(1.0));
        CHECK(c.cooked_protein_pct == Approx(v[4]).margin(0.8));
        // With the middle constant, which has to serve the oven, the fattest lot is 6.5 points off.
        CHECK(batch_cook(m, {5.74, Cook::oven, 75}, general).loss_pct == Approx(v[6]).margin(7));
    }
}

TEST_CASE("USDA pork sausage, raw SR28 07063, pan-fried as reproduced second-hand") {
    // Raw 56.59 water, 15.39 protein, 24.80 fat, 739 mg sodium; pan-fried 49.9 water, 18.5 protein, 27.2 fat; yield 0.83 by protein.
    const auto c = batch_cook(raw(15.39, 24.80, 56.59, 1.88), {5.7, Cook::pan, 71}, middle());
    // The factor of pork and the fat that a bound mass loses stand between this sausage and two others, which keep less: the yield comes
    // out at 0.78, five points too little.
    CHECK(c.yield == Approx(0.83).margin(0.06));
    CHECK(c.cooked_water_pct == Approx(49.9).margin(2.2));
    CHECK(c.cooked_fat_pct == Approx(27.2).margin(2.2));
    CHECK(c.cooked_protein_pct == Approx(18.5).margin(1.4));
}

// The rows behind the factor of each meat and of frying loose; each factor lies inside the spread of its own rows, so what is left is
// told: 0.17 at the worst, fat-free turkey fried as crumbs.
TEST_CASE("ground meats fried loose and as patties (USDA SR28 pairs), water kept a gram of protein") {
    struct Pair {
        const char* what;
        Species species;
        Cook method;
        double water, protein, fat, kept;
    };
    const Pair pairs[] = {
        {"pork 84/16 crumbles, 10972 and 10975", Species::pork, Cook::loose, 64.67, 17.99, 16.00, 51.35 / 26.69},
        {"pork 96/4, 10973 and 10979", Species::pork, Cook::loose, 73.62, 21.10, 4.00, 60.08 / 31.69},
        {"ground pork, 10219 and 10220", Species::pork, Cook::loose, 61.06, 16.88, 21.19, 52.75 / 25.69},
        {"turkey, fat free, crumbles, 05662 and 05663", Species::turkey, Cook::loose, 74.66, 23.57, 1.95, 65.76 / 31.69},
        {"turkey 85/15 crumbles, 05668 and 05669", Species::turkey, Cook::loose, 69.74, 16.90, 12.54, 56.66 / 25.11},
        {"turkey, fat free, patties broiled, 05662 and 05664", Species::turkey, Cook::grill, 74.66, 23.57, 1.95, 68.40 / 28.99},
        {"elk, 17338 and 17339", Species::game, Cook::pan, 68.84, 21.76, 8.82, 64.14 / 26.64},
        {"emu, 05621 and 05622", Species::game, Cook::pan, 72.87, 22.77, 4.03, 65.83 / 28.43}};
    for (const auto& pair : pairs) {
        Material m;
        m[Amount::mass] = m[pair.species] = 100;
        m[Amount::water] = pair.water;
        m[Amount::protein] = m[Amount::meat_protein] = pair.protein;
        m[Amount::fat] = pair.fat;
        const auto c = batch_cook(m, {5.8, pair.method, 71}, middle());
        CAPTURE(pair.what);
        CHECK(c.cooked_water_pct / c.cooked_protein_pct == Approx(pair.kept).margin(0.2));
    }
}

TEST_CASE("yield of ground meats and sausages with the composition known (USDA SR28 pairs, by their protein)") {
    struct Pair {
        const char* what;
        Species species;
        Cook method;
        double water, protein, fat, salt, yield;
    };
    const Pair pairs[] = {{"emu", Species::game, Cook::pan, 72.87, 22.77, 4.03, 0, 22.77 / 28.43},
                          {"turkey fat free, crumbles", Species::turkey, Cook::loose, 74.66, 23.57, 1.95, 0, 23.57 / 31.69},
                          {"turkey fat free, patties", Species::turkey, Cook::grill, 74.66, 23.57, 1.95, 0, 23.57 / 28.99},
                          {"turkey 85/15, crumbles", Species::turkey, Cook::loose, 69.74, 16.90, 12.54, 0, 16.90 / 25.11},
                          {"Italian sausage", Species::pork, Cook::pan, 51.08, 14.25, 31.33, 1.7, 14.25 / 19.12},
                          {"turkey sausage", Species::turkey, Cook::pan, 70.42, 18.79, 8.08, 1.2, 18.79 / 23.89},
                          {"ground pork, how is not said", Species::pork, Cook::loose, 61.06, 16.88, 21.19, 0, 16.88 / 25.69},
                          {"ground pork 84/16, crumbles", Species::pork, Cook::loose, 64.67, 17.99, 16.00, 0, 17.99 / 26.69},
                          {"bison", Species::game, Cook::pan, 71.59, 20.23, 7.21, 0, 20.23 / 25.45},
                          {"elk", Species::game, Cook::pan, 68.84, 21.76, 8.82, 0, 21.76 / 26.64},
                          {"ground beef 70/30", Species::beef, Cook::pan, 54.38, 14.35, 30.0, 0, 14.35 / 22.86},
                          {"ground beef 80/20", Species::beef, Cook::pan, 61.94, 17.17, 20.0, 0, 17.17 / 24.04}};
    for (const auto& pair : pairs) {
        Material m;
        m[Amount::mass] = m[pair.species] = 100;
        m[Amount::water] = pair.water;
        m[Amount::protein] = m[Amount::meat_protein] = pair.protein;
        m[Amount::fat] = pair.fat;
        m[Amount::salt] = pair.salt;
        CAPTURE(pair.what);
        CHECK(batch_cook(m, {5.7, pair.method, 71}, middle()).yield == Approx(pair.yield).margin(0.05));
    }
    // Pan-broiled pork of 4 % fat (10973 and 10979) keeps 1.90 g of water a gram of protein, a fifth less than any other patty: 0.74 for
    // 0.67.
}

TEST_CASE("binder at field size: a point or so from 1 % soy isolate in a bound mass (emulsified pork, 92.81 to 93.62 % yield)") {
    const Material plain = raw(16.5, 20, 61, 1.5);
    Material bound = plain;
    bound[Amount::held_hot] = 4.5;
    const auto loss = [](const Material& m) { return batch_cook(m, {5.9, Cook::poach, 72}, middle()).loss_pct; };
    const double gain = loss(plain) - loss(bound);
    CHECK(gain > 0.5);
    CHECK(gain < 3.2);  // coarse fresh sausage has more water to lose than that emulsion
}

}  // namespace cooking_test
