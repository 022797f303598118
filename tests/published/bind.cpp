// Bind and firmness against published texture: ratios and directions only, since instruments differ.
#include "models/bind.hpp"

#include <vector>

#include "published/rows.hpp"
#include "support/catch.hpp"
#include "support/parameters.hpp"

using namespace standin;

namespace bind_test {

BindParameters middle() { return middle_parameters(bind_bindings()); }

/// `usual_ph`: of the cut, against which acid counts.
Material pork(double grams, double protein, double fat, double water, double index, double usual_ph = 5.8) {
    Material m;
    m[Amount::mass] = m[Amount::meat] = grams;
    m[Amount::water] = water / 100 * grams;
    m[Amount::protein] = m[Amount::meat_protein] = protein / 100 * grams;
    m[Amount::fat] = m[Amount::meat_fat] = fat / 100 * grams;
    m[Amount::bind_mass] = index * grams;
    m[Amount::bind_protein] = index * protein / 100 * grams;
    m[Amount::bind_ph] = usual_ph * m[Amount::bind_protein];
    m[Amount::soft_fat] = m[Amount::fat];
    m[Amount::fat_softens] = 15 * m[Amount::fat];
    return m;
}

/// Kim, Chin 2024, Table 2: pork ham 70, water 28, salt; isolate 1.5 %. The ham's make-up is worked back from their Table 5 (protein
/// 13.4, fat 2.4 in the sausage); the isolate is given the 4.5 g/g of soy isolate, which theirs may not have.
BatchBind low_fat_model(double salt_g, double isolate_g) {
    Material m = pork(700, 19.2, 3.4, 75.5, 0.8);
    m[Amount::water] += 280;
    m[Amount::paste_water] += 280;
    m[Amount::salt] += salt_g;
    m[Amount::held_hot] += 4.5 * isolate_g;
    m[Amount::mass] += 280 + salt_g + isolate_g;
    return batch_bind(m, {6.38, 4, 3, 3, Order::salt_first}, middle());
}

TEST_CASE("more salt makes a low-fat pork sausage harder and more cohesive (Kim, Chin 2024, Table 5)") {
    const auto low = low_fat_model(10, 0), high = low_fat_model(15, 0);
    CHECK(high.hardness / low.hardness == Approx(4378.0 / 2879).epsilon(0.06));  // 1.45 against 1.52
    CHECK(high.bind > low.bind);                                                 // cohesiveness 0.87 to 0.95
}

TEST_CASE("1.5 % isolate at 1.0 % salt does about what 1.5 % salt does (Kim, Chin 2024, Table 5)") {
    const auto plain = low_fat_model(10, 0), isolate = low_fat_model(10, 15), salted = low_fat_model(15, 0);
    CHECK(isolate.hardness / plain.hardness == Approx(4275.0 / 2879).epsilon(0.10));  // 1.37 against 1.48
    CHECK(isolate.hardness / salted.hardness == Approx(4275.0 / 4378).epsilon(0.10));
    CHECK(isolate.bind > plain.bind);  // cohesiveness 0.87 to 1.02
}

TEST_CASE("shear force halves from 10 to 25 % fat (Jeong, Lim, Kim 2016, Table 2)") {
    const auto rows = published_rows("microwaved_patties.csv", 0);
    REQUIRE(rows.size() == 4);
    const auto hardness = [](const std::vector<double>& v) {
        Material m = pork(985, v[1] / 0.985, v[0] / 0.985, v[2] / 0.985, 0.8);
        m[Amount::salt] = 15;
        m[Amount::mass] += 15;
        return batch_bind(m, {5.74, 4, 3, 5, Order::all_together}, middle()).hardness;
    };
    for (const auto& row : rows) {
        // The fat effect was fitted to these rows; the salt in less water adds a little that their fit does not have: within 10 %.
        const double model = hardness(row.values) / hardness(rows[0].values);
        CHECK(model == Approx(row.values[7] / rows[0].values[7]).epsilon(0.30));
    }
    CHECK(hardness(rows[3].values) / hardness(rows[0].values) < 0.6);
}

TEST_CASE("chicken sausage: pH 5.9 and 5.7 alike, 5.5 worse (Karle 2016)") {
    Material m = pork(982, 17, 18, 63, 0.9);
    m[Amount::salt] = 18;
    m[Amount::mass] += 18;
    const auto bind = [&](double ph) { return batch_bind(m, {ph, 4, 3, 5, Order::salt_first}, middle()).bind; };
    CHECK(bind(5.9) - bind(5.7) < bind(5.7) - bind(5.5));
    CHECK(bind(5.7) - bind(5.5) > 5);
}

TEST_CASE("salted mince gives way to the bite with much acid, less than it loses of its bind (Medynski, Pospiech, Kniat 2000)") {
    Material m = pork(982, 17, 18, 63, 0.9);
    m[Amount::salt] = 18;
    m[Amount::mass] += 18;
    const auto at = [&](double ph) { return batch_bind(m, {ph, 4, 3, 5, Order::salt_first}, middle()); };
    CHECK(at(5.8).firmness - at(5.6).firmness < 4);  // a little acid is hardly felt
    for (const double ph : {5.1, 5.0, 4.8}) {
        CAPTURE(ph);
        CHECK(at(ph).firmness < 0.9 * at(5.8).firmness);
        CHECK(at(ph).firmness / at(5.8).firmness > at(ph).bind / at(5.8).bind);
    }
}

TEST_CASE("goat sausage with 5 to 20 % water for fat stays about as cohesive, with 25 % a little less (FSAR 45(3):794, Table 4)") {
    const auto bind = [](double water_g) {
        const double fat_g = 300 - water_g;  // back fat, of which a tenth is water
        Material m = pork(700, 20.6, 2.3, 75.8, 0.85, 5.95);
        m[Amount::mass] += 315;
        m[Amount::water] += water_g + 0.1 * fat_g;
        m[Amount::fat] += 0.88 * fat_g;
        m[Amount::soft_fat] += 0.88 * fat_g;
        m[Amount::fat_softens] += 17 * 0.88 * fat_g;
        m[Amount::paste_water] += water_g;
        m[Amount::poured_water] += water_g;
        m[Amount::salt] = 15;
        return batch_bind(m, {5.95, 4, 4, 3, Order::salt_first}, middle()).bind;
    };
    // Cohesiveness 0.74, 0.74, 0.76, 0.76, 0.68. The salt, which is of the mass there, is thinned in its water here, so bind falls a step
    // and a half.
    CHECK(bind(50) - bind(200) < 13);
    CHECK(bind(50) - bind(250) < 18);
    CHECK(bind(200) > 45);
}

TEST_CASE("coarser plate, longer mixing, less fat: a firmer first bite (Roth et al. 1997)") {
    Material lean = pork(982, 18, 15, 65, 0.8), fat = pork(982, 15, 30, 54, 0.8);
    for (Material* m : {&lean, &fat}) {
        (*m)[Amount::salt] = 18;
        (*m)[Amount::mass] += 18;
    }
    const auto firm = [](const Material& m, double minutes, double plate) {
        return batch_bind(m, {5.7, 4, minutes, plate, Order::all_together}, middle()).firmness;
    };
    CHECK(firm(lean, 2, 5) > firm(lean, 2, 3));
    CHECK(firm(lean, 5, 3) > firm(lean, 2, 3));
    CHECK(firm(lean, 2, 3) > firm(fat, 2, 3));
}

TEST_CASE("salt 3 to 0.5 % lowers hardness and cohesion (Huang 2011)") {
    BatchBind before;
    for (double percent : {0.5, 1.0, 2.0, 3.0}) {
        Material m = pork(1000 - 10 * percent, 16.9, 21, 61, 0.8);
        m[Amount::salt] = 10 * percent;
        m[Amount::mass] = 1000;
        const auto b = batch_bind(m, {5.7, 4, 3, 5, Order::salt_first}, middle());
        CHECK(b.hardness > before.hardness);
        CHECK(b.bind > before.bind);
        before = b;
    }
}

}  // namespace bind_test
