// Water activity against numbers that others published.
#include "models/salt.hpp"

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

double molality(double water_phase_salt_pct) { return 1000 * water_phase_salt_pct / (100 - water_phase_salt_pct) / sodium_chloride_g_mol; }

TEST_CASE("water activity of salt solutions, Pitzer") {
    CHECK(salt_water_activity(0.1, middle()) == Approx(0.9966).margin(0.0002));          // from memory
    CHECK(salt_water_activity(0.5, middle()) == Approx(0.9836).margin(0.0002));          // from memory
    CHECK(salt_water_activity(molality(4.5), middle()) == Approx(0.974).margin(0.001));  // USDA ARS, document 11915
    CHECK(salt_water_activity(1.0, middle()) == Approx(0.9669).margin(0.0002));          // table of water-activity standards
    CHECK(salt_water_activity(2.0, middle()) == Approx(0.9316).margin(0.0002));          // from memory
    CHECK(salt_water_activity(6.0, middle()) == Approx(0.760).margin(0.001));            // salt table of a water-activity meter
    CHECK(osmotic_coefficient(6.0, middle().pitzer) == Approx(1.271).margin(0.003));     // same table; the model gives 1.273
    CHECK(salt_water_activity(7.0, middle()) == Approx(0.753).margin(0.003));            // saturated: 0.753-0.755, same two tables
}

TEST_CASE("water activity of salt solutions, Chirife and Resnik, up to 10 % salt") {
    CHECK(chirife_resnik(0.58) == Approx(0.9966).margin(0.0004));  // from memory
    CHECK(chirife_resnik(2.84) == Approx(0.9836).margin(0.0006));  // from memory
    CHECK(chirife_resnik(4.5) == Approx(0.974).margin(0.0005));    // USDA ARS, document 11915
    CHECK(chirife_resnik(5.52) == Approx(0.9669).margin(0.0005));  // table of water-activity standards
}

TEST_CASE("fresh meat without salt") {
    // More than 0.98 in a study of meats (an excerpt); about 0.99 from memory.
    Material m;
    m[Amount::mass] = 1000;
    m[Amount::water] = 700;
    CHECK(batch_salt(m, middle()).water_activity > 0.98);
}

TEST_CASE("acetic acid alone, by Raoult") {
    // 2.5 g in 100 g water: 55.51 / (55.51 + 0.416) = 0.9926, an identity.
    Material m;
    m[Amount::mass] = 1025;
    m[Amount::water] = m[Amount::paste_water] = 1000;
    m[Acid::acetic] = 25 / 0.06005;
    CHECK(batch_salt(m, middle()).water_activity == Approx(0.9926).margin(0.0001));
}

}  // namespace salt_test
