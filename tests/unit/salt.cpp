#include "models/salt.hpp"

#include <cmath>
#include <random>

#include "models/activity.hpp"
#include "support/catch.hpp"
#include "support/chirife_resnik.hpp"
#include "support/parameters.hpp"

using namespace standin;

namespace salt_test {

const SaltParameters& middle() {
    static const SaltParameters parameters = middle_parameters(salt_bindings());
    return parameters;
}

Material sausage(double salt, double water) {
    Material m;
    m[Amount::mass] = 1000;
    m[Amount::meat] = 900;
    m[Amount::salt] = salt;
    m[Amount::sodium] = salt * 22.990 / 58.443 + 0.5;
    m[Amount::water] = water;
    return m;
}

TEST_CASE("salt in percent of batch, of meat, and of the water") {
    const BatchSalt s = batch_salt(sausage(18, 520), middle());
    CHECK(s.salt_pct == Approx(1.8));
    CHECK(s.salt_pct_of_meat == Approx(2.0));
    CHECK(s.water_phase_salt_pct == Approx(3.35).margin(0.005));
    CHECK(batch_salt(sausage(18, 600), middle()).water_phase_salt_pct == Approx(2.91).margin(0.005));
}

TEST_CASE("water activity of sausage") {
    // Worked out apart from this program: 0.991 for meat's own solutes times salt.
    CHECK(batch_salt(sausage(15, 600), middle()).water_activity == Approx(0.991 * 0.986).margin(0.0005));
    CHECK(batch_salt(sausage(18, 520), middle()).water_activity == Approx(0.991 * 0.9805).margin(0.0005));
    CHECK(batch_salt(sausage(0, 600), middle()).water_activity == Approx(0.991).margin(1e-6));
}

TEST_CASE("ice dilutes meat's own solutes") {
    Material m = sausage(0, 600);
    m[Amount::paste_water] = 300;
    CHECK(batch_salt(m, middle()).water_activity == Approx(std::sqrt(0.991)).margin(1e-6));
}

TEST_CASE("vinegar hardly moves water activity") {
    Material m = sausage(15, 600);
    const double before = batch_salt(m, middle()).water_activity;
    m[Acid::acetic] = 25;
    CHECK(before - batch_salt(m, middle()).water_activity > 0);
    CHECK(before - batch_salt(m, middle()).water_activity < 0.001);
}

TEST_CASE("sugars and alcohol lower water activity") {
    Material m = sausage(15, 600);
    const double before = batch_salt(m, middle()).water_activity;
    m[Amount::sugars] = 20;
    const double sweet = batch_salt(m, middle()).water_activity;
    CHECK(before - sweet == Approx(0.0025).margin(0.001));
    m[Amount::alcohol] = 5;
    CHECK(batch_salt(m, middle()).water_activity < sweet);
}

TEST_CASE("both salt equations agree up to 10 % in the water") {
    for (double m = 0; m <= 1.9; m += 0.1) {
        const double wps = 100 * m * sodium_chloride_g_mol / (1000 + m * sodium_chloride_g_mol);
        CHECK(salt_water_activity(m, middle()) == Approx(chirife_resnik(wps)).margin(0.0007));
    }
}

TEST_CASE("nothing, no water and no meat have values") {
    CHECK(batch_salt(Material{}, middle()).water_activity == 1);
    Material fat;
    fat[Amount::mass] = fat[Amount::fat] = 1000;
    CHECK(batch_salt(fat, middle()).water_activity == Approx(1));
    CHECK(batch_salt(fat, middle()).water_phase_salt_pct == 0);
    CHECK(batch_salt(fat, middle()).salt_pct_of_meat == 0);
    Material salt;
    salt[Amount::mass] = salt[Amount::salt] = 100;
    CHECK(batch_salt(salt, middle()).water_phase_salt_pct == Approx(100));
    CHECK(batch_salt(salt, middle()).water_activity == Approx(0.7524).margin(0.0005));
}

TEST_CASE("water activity stays in (0, 1] and falls with each solute") {
    std::mt19937_64 random(7);
    const auto uniform = [&](double high) { return high * static_cast<double>(random() >> 11) * 0x1p-53; };
    int out = 0, rising = 0;
    for (int i = 0; i < 20000; ++i) {
        Material m;
        m[Amount::mass] = 1000;
        m[Amount::water] = random() % 8 ? uniform(900) : 0;
        m[Amount::paste_water] = uniform(m[Amount::water]);
        m[Amount::salt] = uniform(100);
        m[Amount::sugars] = uniform(200);
        m[Amount::alcohol] = uniform(50);
        m[Amount::strong_ions] = uniform(100);
        m[Acid::citric] = uniform(100);
        const double before = batch_salt(m, middle()).water_activity;
        if (!(before >= 0 && before <= 1)) ++out;
        for (const Amount solute : {Amount::salt, Amount::sugars, Amount::alcohol}) {
            Material more = m;
            more[solute] += 1;
            if (batch_salt(more, middle()).water_activity > before) ++rising;
        }
    }
    CHECK(out == 0);
    CHECK(rising == 0);
}

}  // namespace salt_test
