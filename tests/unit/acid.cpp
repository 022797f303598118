#include "models/acid.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <random>
#include <utility>

#include "support/catch.hpp"
#include "support/parameters.hpp"

using namespace standin;

namespace acid_test {

const AcidParameters& middle() {
    static const AcidParameters parameters = middle_parameters(acid_bindings());
    return parameters;
}

// `kg` of reference lean at its own pH, buffer scale `s`; three quarters water.
Material lean(double kg, double ph, double s) {
    Material m;
    m[Amount::mass] = 1000 * kg;
    m[Amount::water] = 740 * kg;
    m[Amount::meat] = 1000 * kg;
    m[Amount::meat_sites] = kg * s;
    m[Amount::meat_protons] = kg * s * bound_protons(ph, middle());
    return m;
}

// A kilogram of batch, `share` of it lean at pH 5.7.
Material batch_with(Acid acid, double mmol, double share, double s, double salt_g = 0) {
    Material m = lean(share, 5.7, s);
    m[Amount::mass] = 1000;
    m[Amount::water] = 550;
    m[Amount::salt] = salt_g;
    m[acid] = mmol;
    m[Amount::titratable] = mmol * titrated_protons(acid);
    return m;
}

double ph_of(const Material& m) { return batch_acid(m, middle()).ph; }

// The tables checked against were worked out at an ionic strength of 0.25 in all food.
double ph_at_quarter(const Material& m) {
    AcidParameters p = middle();
    p.native_ionic = 0.25;
    return batch_acid(m, p).ph;
}

double uniform(std::mt19937_64& random, double high) { return high * static_cast<double>(random() >> 11) * 0x1p-53; }

// Any mix: each amount absent half of the time, and over many sizes when it is there.
Material random_mix(std::mt19937_64& random) {
    Material m;
    const auto amount = [&](double high) {
        const double size = uniform(random, 1);
        return random() % 2 ? high * size * size * size : 0.0;
    };
    const double sites = amount(2), buffer = amount(200);
    m[Amount::mass] = 1000;
    m[Amount::water] = amount(1000);
    m[Amount::salt] = amount(100);
    m[Amount::meat_sites] = sites;
    m[Amount::meat_protons] = sites * bound_protons(4.5 + uniform(random, 3), middle());
    m[Amount::plant_buffer] = buffer;
    m[Amount::plant_buffer_ph] = buffer * (3 + uniform(random, 6));
    m[Amount::strong_ions] = amount(500);
    for (std::size_t j = 0; j < count_of<Acid>; ++j) {
        m[static_cast<Acid>(j)] = amount(500);
        m[Amount::titratable] += m[static_cast<Acid>(j)];
    }
    return m;
}

TEST_CASE("lean alone has its own pH, salted or not") {
    for (const double ph : {5.4, 5.7, 6.2}) {
        CHECK(ph_of(lean(1, ph, 0.9)) == Approx(ph).margin(1e-3));
        Material salted = lean(1, ph, 0.9);
        salted[Amount::salt] = 18;
        CHECK(ph_of(salted) == Approx(ph).margin(1e-3));
    }
}

TEST_CASE("vegetables alone have their own pH") {
    Material m;
    m[Amount::mass] = 1000;
    m[Amount::water] = 900;
    m[Amount::plant_buffer] = 15;
    m[Amount::plant_buffer_ph] = 15 * 6.1;
    CHECK(ph_of(m) == Approx(6.1).margin(1e-3));
}

TEST_CASE("water is neutral, and so is nothing at all") {
    Material m;
    CHECK(ph_of(m) == Approx(7).margin(0.01));
    m[Amount::mass] = m[Amount::water] = 1000;
    CHECK(ph_of(m) == Approx(7).margin(0.01));
    CHECK(batch_acid(m, middle()).sourness_mmol_kg < 0.001);
    Material dry;
    dry[Amount::mass] = dry[Amount::salt] = 20;
    CHECK(ph_of(dry) == Approx(7).margin(0.01));
}

TEST_CASE("dry acid stops at the end of the bracket") {
    Material m;
    m[Amount::mass] = 10;
    m[Acid::citric] = 52;
    CHECK(ph_of(m) >= -1);
    CHECK(ph_of(m) < 1);
}

TEST_CASE("protons held by lean") {
    const double slope = (bound_protons(5.5, middle()) - bound_protons(7.0, middle())) / 1.5;
    CHECK(slope == Approx(60.0).margin(0.1));
    const double expected[][2] = {{4.5, 157.3}, {5.0, 84.7}, {5.5, 47.6}, {5.75, 46.0}, {6.25, 63.2}, {7.0, 62.2}};
    for (const auto& [ph, buffer] : expected)
        CHECK(500 * (bound_protons(ph - 0.001, middle()) - bound_protons(ph + 0.001, middle())) == Approx(buffer).margin(0.1));
}

// Worked out apart from this program, by bisection in Python with mixed constants at an ionic strength of 0.25.
TEST_CASE("vinegar and lemon juice on pork") {
    struct Row {
        Acid acid;
        double mmol, share;
        std::array<double, 3> ph;
    };
    const double vinegar = 8.327, lemon = 10 * 48 / 192.12;  // mmol for each percent
    const Row rows[] = {{Acid::acetic, 1 * vinegar, 1.0, {5.50, 5.54, 5.57}}, {Acid::acetic, 2 * vinegar, 1.0, {5.34, 5.40, 5.46}},
                        {Acid::acetic, 3 * vinegar, 1.0, {5.21, 5.28, 5.36}}, {Acid::acetic, 5 * vinegar, 1.0, {5.03, 5.11, 5.20}},
                        {Acid::acetic, 1 * vinegar, 0.7, {5.43, 5.47, 5.52}}, {Acid::acetic, 2 * vinegar, 0.7, {5.23, 5.30, 5.37}},
                        {Acid::acetic, 3 * vinegar, 0.7, {5.09, 5.17, 5.25}}, {Acid::acetic, 5 * vinegar, 0.7, {4.91, 4.99, 5.08}},
                        {Acid::citric, 1 * lemon, 0.7, {5.48, 5.52, 5.56}},   {Acid::citric, 2 * lemon, 0.7, {5.30, 5.37, 5.43}},
                        {Acid::citric, 3 * lemon, 0.7, {5.17, 5.24, 5.33}},   {Acid::citric, 5 * lemon, 0.7, {4.97, 5.06, 5.16}}};
    const std::array<double, 3> scales{0.8, 1.0, 1.3};
    double worst = 0, worst_salted = 0;
    for (const auto& row : rows) {
        for (std::size_t i = 0; i < 3; ++i) {
            const double quarter = ph_at_quarter(batch_with(row.acid, row.mmol, row.share, scales[i]));
            const double salted = ph_of(batch_with(row.acid, row.mmol, row.share, scales[i], 15));
            worst = std::max(worst, std::abs(quarter - row.ph[i]));
            worst_salted = std::max(worst_salted, std::abs(salted - row.ph[i]));
        }
    }
    CAPTURE(worst, worst_salted);
    CHECK(worst < 0.0075);       // the tables are rounded to 0.01
    CHECK(worst_salted < 0.03);  // at a sausage's ionic strength of 0.5
}

TEST_CASE("acid that brings 70 % lean from pH 5.7 to 5.2") {
    const std::pair<Acid, double> rows[] = {{Acid::acetic, 22.6}, {Acid::lactic, 18.5},  {Acid::citric, 8.5},
                                            {Acid::malic, 10.2},  {Acid::tartaric, 9.2}, {Acid::oxalic, 9.1}};
    for (const auto& [acid, mmol] : rows) CHECK(ph_at_quarter(batch_with(acid, mmol, 0.7, 1)) == Approx(5.2).margin(0.006));
}

TEST_CASE("30 g of vinegar in a kilogram leave 5.6 mmol undissociated") {
    AcidParameters p = middle();
    p.native_ionic = 0.25;
    const BatchAcid a = batch_acid(batch_with(Acid::acetic, 24.98, 0.7, 1), p);
    CHECK(a.ph == Approx(5.167).margin(0.002));
    CHECK(a.undissociated_mmol_kg == Approx(5.58).margin(0.03));
    CHECK(a.titratable_mmol_kg == Approx(24.98));
    CHECK(a.sourness_mmol_kg == Approx(0.1 * 24.98 + 0.9 * 5.59).margin(0.02));  // little weight on titration: J Food Sci 72:S352
    CHECK(a.cooked_ph == Approx(a.ph + 0.25));
}

TEST_CASE("any mix has a finite pH, and acid never raises it") {
    std::mt19937_64 random(20240611);
    const AcidConstants constants = prepare(middle());
    int out = 0, rising = 0;
    for (int i = 0; i < 100000; ++i) {
        Material m = random_mix(random);
        const BatchAcid before = batch_acid(m, constants);
        if (!(before.ph >= -1 && before.ph <= 15 && std::isfinite(before.sourness_mmol_kg) && before.undissociated_mmol_kg >= 0)) ++out;
        const double more = uniform(random, 50);
        m[static_cast<Acid>(random() % count_of<Acid>)] += more;
        if (batch_acid(m, constants).ph > before.ph + 1e-9) ++rising;
    }
    CHECK(out == 0);
    CHECK(rising == 0);
}

TEST_CASE("pH moves smoothly as vinegar goes in") {
    double before = 6, step_before = 0;
    for (int i = 0; i <= 600; ++i) {
        const double ph = ph_of(batch_with(Acid::acetic, 0.1 * i, 0.7, 0.9, 15));
        CHECK(ph < before);
        if (i > 1) CHECK(before - ph == Approx(step_before).epsilon(0.05));
        step_before = before - ph;
        before = ph;
    }
}

}  // namespace acid_test
