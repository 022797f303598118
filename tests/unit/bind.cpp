// Bind and firmness: directions, limits, smoothness.
#include "models/bind.hpp"

#include <cmath>
#include <random>

#include "support/catch.hpp"
#include "support/parameters.hpp"

using namespace standin;

namespace bind_test {

BindParameters middle() { return middle_parameters(bind_bindings()); }

/// `grams` of an 80/20 pork shoulder.
Material shoulder(double grams) {
    Material m;
    m[Amount::mass] = m[Amount::meat] = grams;
    m[Amount::water] = 0.61 * grams;
    m[Amount::protein] = m[Amount::meat_protein] = 0.169 * grams;
    m[Amount::fat] = m[Amount::meat_fat] = 0.21 * grams;
    m[Amount::bind_mass] = 0.8 * grams;
    m[Amount::bind_protein] = 0.8 * 0.169 * grams;
    m[Amount::bind_ph] = 5.7 * m[Amount::bind_protein];
    m[Amount::soft_fat] = 0.21 * grams;
    m[Amount::fat_softens] = 15 * m[Amount::soft_fat];
    return m;
}

void salt(Material& m, double grams) {
    m[Amount::salt] += grams;
    m[Amount::mass] += grams;
}

void wet(Material& m, double grams, double water, double acid_mmol = 0) {
    m[Amount::mass] += grams;
    m[Amount::water] += water * grams;
    m[Amount::paste_water] += water * grams;
    m[Amount::titratable] += acid_mmol;
}

Material plain_sausage() {
    Material m = shoulder(982);
    salt(m, 18);
    return m;
}

Material with_paste(double grams) {
    Material m = shoulder(982 - grams);
    salt(m, 18);
    wet(m, grams, 0.9);
    return m;
}

const MixState well_made{5.7, 4, 3, 5, Order::all_together};

TEST_CASE("a well made fresh pork sausage sits where the scale was set") {
    const auto b = batch_bind(plain_sausage(), well_made, middle());
    CHECK(b.bind > 70);
    CHECK(b.bind < 80);
    CHECK(b.firmness == Approx(50).margin(3));
    CHECK(bind_word(b.bind) == "sliceable");
}

TEST_CASE("a sour wet mass crumbles, but is not soft in the same measure") {
    Material m = shoulder(682);
    salt(m, 18);
    wet(m, 250, 0.92);
    wet(m, 50, 0.95, 41.6);
    const auto sour = batch_bind(m, {4.95, 4, 3, 5, Order::all_together}, middle());
    CHECK(sour.bind < 15);
    CHECK(bind_word(sour.bind) == "crumbly");
    const auto good = batch_bind(plain_sausage(), well_made, middle());
    CHECK(sour.firmness / good.firmness > 2 * sour.bind / good.bind);
    CHECK(sour.firmness > 14);
    CHECK(sour.acid_factor < 0.2);
    CHECK(sour.dilution_factor < 0.7);
}

TEST_CASE("factors stay between nothing and one, results between 0 and 100, and never NaN") {
    std::mt19937_64 random(7);
    std::uniform_real_distribution<double> unit(0, 1);
    const auto p = middle();
    for (int i = 0; i < 2000; ++i) {
        Material m;
        for (Amount a : {Amount::mass, Amount::water, Amount::fat, Amount::salt, Amount::titratable, Amount::meat_protein,
                         Amount::bind_protein, Amount::bind_mass, Amount::soft_fat, Amount::free_fat, Amount::held_cold, Amount::held_hot,
                         Amount::held_chilled, Amount::held_thick, Amount::paste_water})
            m[a] = unit(random) < 0.3 ? 0 : 500 * unit(random);
        m[Amount::bind_ph] = (5.4 + 1.2 * unit(random)) * m[Amount::bind_protein];
        m[Amount::fat_softens] = (-6 + 30 * unit(random)) * m[Amount::soft_fat];
        m[Amount::held_protein] = unit(random) * (m[Amount::held_cold] + m[Amount::held_hot]);
        const auto order = static_cast<Order>(i % 3);
        const auto b = batch_bind(m, {3 + 6 * unit(random), 30 * unit(random), 20 * unit(random), 20 * unit(random), order}, p);
        for (double factor : {b.salt_factor, b.order_factor, b.cold_factor, b.mixing_factor, b.dilution_factor, b.gum_factor})
            REQUIRE((factor >= 0 && factor <= 1));
        REQUIRE((b.acid_factor > 0 && b.acid_factor < 2.7));  // over 1 where the batch lies above the usual pH of its meat
        REQUIRE((b.bind >= 0 && b.bind <= 100));
        REQUIRE((b.firmness >= 0 && b.firmness <= 100));
    }
    CHECK(batch_bind(Material{}, well_made, p).bind == 0);
}

TEST_CASE("bind and firmness do not depend on the size of the batch") {
    Material small;
    small.add(with_paste(120), 0.01);
    const auto p = middle();
    CHECK(batch_bind(small, well_made, p).bind == Approx(batch_bind(with_paste(120), well_made, p).bind));
    CHECK(batch_bind(small, well_made, p).firmness == Approx(batch_bind(with_paste(120), well_made, p).firmness));
}

TEST_CASE("what makers do moves bind the way they know") {
    const auto p = middle();
    const Material m = plain_sausage();
    const double base = batch_bind(m, well_made, p).bind;
    MixState other = well_made;
    other.temperature_c = 12;
    CHECK(batch_bind(m, other, p).bind < base);
    other = well_made;
    other.mixing_min = 0.5;
    CHECK(batch_bind(m, other, p).bind < base);
    other = well_made;
    other.plate_mm = 10;
    CHECK(batch_bind(m, other, p).bind < base);
    CHECK(batch_bind(m, other, p).firmness > batch_bind(m, well_made, p).firmness);
    double before = 0, firm_before = 0;
    for (double grams = 0; grams <= 30; grams += 1) {
        Material salted = shoulder(980);
        salt(salted, grams);
        const auto b = batch_bind(salted, well_made, p);
        CHECK(b.bind > before - 0.2);  // past the knee, salt only takes the place of meat
        CHECK(b.firmness > firm_before - 0.2);
        before = b.bind;
        firm_before = b.firmness;
    }
    before = 100;
    for (double ph = 6.4; ph >= 4.6; ph -= 0.05) {
        other = well_made;
        other.ph = ph;
        const double bind = batch_bind(m, other, p).bind;
        CHECK(bind <= before);
        before = bind;
    }
}

TEST_CASE("acid counts from the pH that the meat has by itself") {
    const auto p = middle();
    MixState own = well_made;
    Material beef = plain_sausage();
    beef[Amount::bind_ph] = 5.6 * beef[Amount::bind_protein];
    own.ph = 5.6;
    CHECK(batch_bind(beef, own, p).acid_factor == Approx(1));
    CHECK(batch_bind(plain_sausage(), well_made, p).acid_factor == Approx(1));
    CHECK(batch_bind(beef, own, p).bind == Approx(batch_bind(plain_sausage(), well_made, p).bind));
    own.ph = 5.3;
    CHECK(batch_bind(beef, own, p).acid_factor < 0.8);
}

TEST_CASE("smear needs fat, and soft fat smears first") {
    const auto p = middle();
    MixState warm = well_made;
    warm.temperature_c = 12;
    const auto kept = [&](double fat, double softens) {
        Material m = plain_sausage();
        m[Amount::soft_fat] = fat;
        m[Amount::fat_softens] = softens * fat;
        return batch_bind(m, warm, p).cold_factor;
    };
    CHECK(kept(0, 15) == Approx(1).margin(0.001));
    CHECK(kept(30, 15) > kept(100, 15));
    CHECK(kept(100, 15) > kept(250, 15));
    double before = 0;
    for (double softens : {0.0, 7.0, 13.0, 15.0, 17.0, 24.0}) {  // oil, duck, belly, pork, back fat, suet
        CHECK(kept(200, softens) > before);
        before = kept(200, softens);
    }
}

TEST_CASE("ice gives no protein, ever less of it down to hard frozen, and salt keeps water liquid") {
    const auto p = middle();
    const auto at = [&](double temperature_c) {
        MixState mix = well_made;
        mix.temperature_c = temperature_c;
        return batch_bind(plain_sausage(), mix, p).bind;
    };
    CHECK(at(0) == Approx(at(3)).margin(1));
    CHECK(at(-1) > 0.95 * at(3));
    CHECK(at(-3) < 0.9 * at(3));
    CHECK(at(-6) < 0.5 * at(3));
    CHECK(at(-15) < 10);
    constexpr double noticed = 8;  // of bind, in a slice that is bent or bitten
    for (double t = 3; t > -15; t -= 0.5) {
        CAPTURE(t);
        CHECK(at(t - 0.5) <= at(t) + 1e-9);
        CHECK(at(t - 0.5) > at(t) - noticed);
    }
    MixState cold = well_made;
    cold.temperature_c = -2;
    Material unsalted = plain_sausage();
    unsalted[Amount::salt] = 0;
    CHECK(batch_bind(unsalted, cold, p).cold_factor < 0.6 * batch_bind(plain_sausage(), cold, p).cold_factor);
}

TEST_CASE("what salted meat takes up of poured water lies not between its particles; without salt it does") {
    const auto p = middle();
    Material wet = plain_sausage();
    wet[Amount::mass] += 60;
    wet[Amount::water] += 60;
    wet[Amount::paste_water] += 60;
    Material poured = wet;
    poured[Amount::poured_water] += 60;
    CHECK(batch_bind(poured, well_made, p).bind > batch_bind(wet, well_made, p).bind + 1);
    wet[Amount::salt] = poured[Amount::salt] = 0;
    CHECK(batch_bind(poured, well_made, p).bind == Approx(batch_bind(wet, well_made, p).bind).margin(0.5));
}

TEST_CASE("gums hold water and soften the gel") {
    const auto p = middle();
    const Material plain = plain_sausage();
    double bind_before = 101, firm_before = 101;
    for (double held = 0; held <= 200; held += 20) {
        Material m = plain;
        m[Amount::held_thick] = held;
        const auto b = batch_bind(m, well_made, p);
        CHECK(b.bind < bind_before);
        CHECK(b.firmness < firm_before);
        bind_before = b.bind;
        firm_before = b.firmness;
    }
    Material wet_mass = with_paste(120), thick = wet_mass;
    thick[Amount::held_thick] = 60;
    CHECK(batch_bind(thick, well_made, p).loose_water < batch_bind(wet_mass, well_made, p).loose_water);
}

TEST_CASE("protein binders do least near their isoelectric point, starch does not care") {
    const auto p = middle();
    const auto gain = [&](double ph, double by_protein) {
        MixState mix = well_made;
        mix.ph = ph;
        Material m = with_paste(120), bound = m;
        bound[Amount::held_hot] = 60;
        bound[Amount::held_protein] = 60 * by_protein;
        return batch_bind(bound, mix, p).binder;
    };
    CHECK(gain(4.7, 0.9) < 0.7 * gain(6, 0.9));
    CHECK(gain(5.2, 0.9) < gain(6, 0.9));
    CHECK(gain(4.7, 0) == Approx(gain(6, 0)));
}

TEST_CASE("oil for fat in its cells is softer and binds less") {
    const auto p = middle();
    Material oiled = plain_sausage();
    oiled[Amount::free_fat] = oiled[Amount::soft_fat] = 200;
    oiled[Amount::fat_softens] = 0;
    const auto fat = batch_bind(plain_sausage(), well_made, p), oil = batch_bind(oiled, well_made, p);
    CHECK(oil.firmness < fat.firmness - 3);
    CHECK(oil.bind < fat.bind - 5);
}

TEST_CASE("the order counts only with acid, and salt first is best") {
    const auto p = middle();
    Material m = plain_sausage();
    const auto at = [&](Order order) {
        MixState mix = well_made;
        mix.order = order;
        return batch_bind(m, mix, p);
    };
    CHECK(at(Order::acid_first).bind == at(Order::salt_first).bind);
    wet(m, 30, 0.95, 25);
    CHECK(at(Order::salt_first).order_factor == 1);
    CHECK(at(Order::all_together).bind < at(Order::salt_first).bind);
    CHECK(at(Order::acid_first).bind < at(Order::all_together).bind);
    CHECK(at(Order::acid_first).order_factor > 0.7);
}

TEST_CASE("wet paste loosens, binder tightens, gelatin does neither in the heat") {
    const auto p = middle();
    double before = 100;
    for (double grams = 0; grams <= 400; grams += 20) {
        const double bind = batch_bind(with_paste(grams), well_made, p).bind;
        CHECK(bind < before);
        before = bind;
    }
    const auto loose = batch_bind(with_paste(120), well_made, p);
    Material bound = with_paste(120);
    before = loose.bind;
    for (int i = 0; i < 40; ++i) {
        bound[Amount::held_hot] += 10;
        const double bind = batch_bind(bound, well_made, p).bind;
        CHECK(bind > before);
        before = bind;
    }
    Material cold = with_paste(120), hot = with_paste(120), jelly = with_paste(120);
    cold[Amount::held_cold] = hot[Amount::held_hot] = jelly[Amount::held_chilled] = 60;
    CHECK(batch_bind(cold, well_made, p).bind < batch_bind(hot, well_made, p).bind);
    CHECK(batch_bind(cold, well_made, p).bind > loose.bind);
    CHECK(batch_bind(hot, well_made, p).firmness > loose.firmness);
    CHECK(batch_bind(jelly, well_made, p).bind == loose.bind);
    CHECK(batch_bind(jelly, well_made, p).bind_served_cold > loose.bind_served_cold + 3);
    CHECK(batch_bind(jelly, well_made, p).firmness_served_cold > loose.firmness_served_cold);
    CHECK(loose.bind_served_cold == loose.bind);
}

TEST_CASE("loose water: none beyond the paste, none below zero, and what is bound fits the binder") {
    for (double paste = 0; paste < 300; paste += 7)
        for (double capacity = 0; capacity < 300; capacity += 11) {
            const double loose = loose_paste_water(paste, capacity);
            CHECK((loose >= 0 && loose <= paste));
            CHECK(paste - loose <= capacity + 1e-9);
        }
}

TEST_CASE("no corner in any amount") {
    const auto p = middle();
    for (Amount a : {Amount::salt, Amount::water, Amount::meat_protein, Amount::fat, Amount::paste_water, Amount::held_hot,
                     Amount::held_cold, Amount::titratable, Amount::bind_protein}) {
        double last = 0, last_slope = 0;
        for (int i = 0; i < 400; ++i) {
            Material m = with_paste(120);
            m[a] = 0.5 * (i + 1);
            m[Amount::bind_ph] = 5.7 * m[Amount::bind_protein];
            const double bind = batch_bind(m, well_made, p).bind;
            const double slope = bind - last;
            if (i > 5) {
                CHECK(std::abs(slope - last_slope) < 0.25);
            }
            last = bind;
            last_slope = slope;
        }
    }
}

TEST_CASE("words of bind") {
    CHECK(bind_word(0) == "crumbly");
    CHECK(bind_word(30) == "loose");
    CHECK(bind_word(50) == "tender");
    CHECK(bind_word(75) == "sliceable");
    CHECK(bind_word(95) == "firm-bound");
}

}  // namespace bind_test
