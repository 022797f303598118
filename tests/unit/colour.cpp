// Colour of the batch: conservation, direction, smoothness, and defined limits.
#include "models/colour.hpp"

#include <algorithm>
#include <cmath>
#include <random>

#include "models/colour_words.hpp"
#include "support/catch.hpp"
#include "support/parameters.hpp"

using namespace standin;

namespace colour_test {

ColourParameters middle() { return middle_parameters(colour_bindings()); }

// 1 kg pork of which 25 % is fat, with raw leaf and blanched leaf in it (mg chlorophyll).
Material pork(double live = 0, double set = 0) {
    Material m;
    m[Amount::mass] = m[Amount::meat] = m[Species::pork] = 1000;
    m[Amount::meat_fat] = m[Amount::fat] = 250;
    m[Amount::chlorophyll_live] = live;
    m[Amount::chlorophyll_set] = set;
    return m;
}

BatchColour coloured(const Material& m, double ph = 5.8, double rest_h = 24) {
    return batch_colour(m, ph, rest_h, 3, Cook::pan, 71, middle());
}

bool finite(const Lab& c) { return std::isfinite(c.L) && std::isfinite(c.a) && std::isfinite(c.b); }

double moved(const BatchColour& x, const BatchColour& y) {
    return std::max({ciede2000(x.raw, y.raw), ciede2000(x.rested, y.rested), ciede2000(x.cooked, y.cooked)});
}

TEST_CASE("Kubelka-Munk there and back") {
    for (double r = 0.01; r <= 1; r += 0.01) CHECK(reflectance(k_over_s(r)) == Approx(r));
    CHECK(reflectance(0) == 1);
    CHECK(reflectance(1e6) > 0);
    CHECK(std::isfinite(k_over_s(0.0)));
}

TEST_CASE("every meat has a colour, darker raw red meat than white") {
    const auto p = middle();
    for (std::size_t s = 0; s < count_of<Species>; ++s) {
        CHECK(p.raw_lean[s].red > 0);
        CHECK(p.raw_lean[s].blue > 0);
        CHECK(p.cooked[s].green > 0);
    }
    const auto raw = [&](Species s) {
        Material m = pork();
        m[Species::pork] = 0;
        m[s] = 1000;
        return coloured(m).raw;
    };
    CHECK(raw(Species::beef).L < raw(Species::pork).L);
    CHECK(raw(Species::game).L < raw(Species::chicken).L);
    CHECK(raw(Species::beef).a > raw(Species::fish).a);
}

TEST_CASE("half pork and half beef lies between the two") {
    Material half = pork(), beef = pork();
    half[Species::pork] = half[Species::beef] = 500;
    beef[Species::pork] = 0;
    beef[Species::beef] = 1000;
    CHECK(coloured(half).raw.L < coloured(pork()).raw.L);
    CHECK(coloured(half).raw.L > coloured(beef).raw.L);
}

TEST_CASE("more leaf is greener and darker, in every state") {
    BatchColour before = coloured(pork());
    for (double mg = 20; mg <= 400; mg += 20) {
        const BatchColour now = coloured(pork(mg));
        CHECK(now.raw.L < before.raw.L);
        CHECK(now.raw.a < before.raw.a);
        CHECK(now.cooked.L < before.cooked.L);
        CHECK(now.chlorophyll_mg_kg > before.chlorophyll_mg_kg);
        before = now;
    }
}

TEST_CASE("acid, time and heat cost green; raw leaf holds in the cold, blanched leaf less") {
    CHECK(coloured(pork(80), 4.7).kept_rested < coloured(pork(80), 5.8).kept_rested);
    CHECK(coloured(pork(80), 5.8, 48).kept_rested < coloured(pork(80), 5.8, 12).kept_rested);
    CHECK(coloured(pork(0, 80)).kept_rested < coloured(pork(80)).kept_rested);
    const BatchColour c = coloured(pork(80));
    CHECK(c.kept_cooked < c.kept_rested);
    CHECK(c.kept_rested < 1);
    CHECK(c.rested.a > c.raw.a);
    CHECK(c.hue_rested == Approx(hue_of(c.rested)));
    const auto p = middle();
    const auto cooked = [&](Cook how) { return batch_colour(pork(80), 5.6, 24, 3, how, 71, p).kept_cooked; };
    CHECK(cooked(Cook::oven) < cooked(Cook::poach));
    CHECK(cooked(Cook::poach) < cooked(Cook::pan));
}

TEST_CASE("pigment is turned, not lost: what is no longer chlorophyll colours as pheophytin") {
    const auto p = middle();
    const BatchColour c = coloured(pork(100), 5.2, 48);
    const double left = c.chlorophyll_mg_kg * c.kept_rested;
    const Lab expected = lab_of_k_over_s(with_pigment(raw_base(pork(), p), left, 100 - left, 1, p));
    CHECK(ciede2000(c.rested, expected) < 1e-6);
}

TEST_CASE("tint adds its K/S for every per cent of the mass") {
    const auto p = middle();
    Material m = pork();
    m[Amount::tint_red] = 0.1 * 20;  // 20 g in 1000 g = 2 %
    m[Amount::tint_green] = 0.5 * 20;
    m[Amount::tint_blue] = 0.8 * 20;
    const Bands base = raw_base(m, p);
    CHECK(ciede2000(coloured(m).raw, lab_of_k_over_s({base.red + 0.2, base.green + 1.0, base.blue + 1.6})) < 1e-9);
}

TEST_CASE("no mass, no meat, no leaf: defined, and reached without a jump") {
    for (const Material& m : {Material{}, pork()}) {
        const BatchColour c = coloured(m);
        CHECK((finite(c.raw) && finite(c.rested) && finite(c.cooked)));
        CHECK(c.chlorophyll_mg_kg == 0);
        CHECK((c.kept_rested > 0 && c.kept_rested <= 1));
        CHECK(std::isfinite(c.hue_rested));
    }
    CHECK(coloured(pork()).kept_cooked == Approx(coloured(pork(1e-9)).kept_cooked));
    Material paste;
    paste[Amount::mass] = 1000;
    Material nearly = paste;
    nearly[Amount::meat] = nearly[Species::pork] = 1e-6;
    CHECK(moved(coloured(paste), coloured(nearly)) < 1e-6);
    const Lab black = batch_colour(pork(1e9), 0, 1e6, 40, Cook::oven, 100, middle()).cooked;
    CHECK(finite(black));
}

TEST_CASE("small steps in any amount move the colour a little") {
    std::mt19937_64 random(3);
    std::uniform_real_distribution<double> share(0, 1);
    for (int i = 0; i < 400; ++i) {
        Material m = pork(300 * share(random), 300 * share(random));
        m[Amount::meat] = 1000 * share(random);
        m[Amount::meat_fat] = m[Amount::meat] * share(random);
        m[Species::beef] = m[Amount::meat] * share(random);
        m[Species::pork] = m[Amount::meat] - m[Species::beef];
        m[Amount::tint_red] = 5 * share(random);
        Material n = m;
        for (const Amount a :
             {Amount::mass, Amount::meat_fat, Amount::chlorophyll_live, Amount::chlorophyll_set, Amount::pheophytin, Amount::tint_blue})
            n[a] += 1e-4;
        n[Species::beef] += 1e-4;
        CHECK(moved(coloured(m, 5.5), coloured(n, 5.5 + 1e-6)) < 1e-3);
    }
}

TEST_CASE("crowded pigment colours less for each milligram, without a step") {
    const auto p = middle();
    const auto added = [&](double mg) { return with_pigment({}, mg, 0, 1, p).red; };
    CHECK(added(100) == Approx(2 * added(50)));
    CHECK(added(400) < 2 * added(200));
    CHECK(added(400) > added(200));
    CHECK(added(p.saturation_from + 1e-6) == Approx(added(p.saturation_from - 1e-6)));
}

TEST_CASE("each lever of the colour moves what it should") {
    auto p = middle();
    const auto now = [&] { return batch_colour(pork(80), 5.8, 24, 3, Cook::pan, 71, p); };
    const BatchColour before = now();
    p.redness = 0.65;  // blooming
    CHECK(now().raw.a > before.raw.a + 2);
    CHECK(now().cooked == before.cooked);
    p = middle();
    p.cooked_factor = 1;
    CHECK(now().cooked.L > before.cooked.L + 0.5);
    CHECK(now().raw == before.raw);
    p = middle();
    p.cooked_poached = 0.5;
    CHECK(now().cooked == before.cooked);  // of dry heat
    p = middle();
    p.raw_scale = 1.3;
    CHECK(now().raw.L < before.raw.L);
    p = middle();
    p.cooked_scale = 1.3;
    CHECK(now().cooked.L < before.cooked.L);
}

TEST_CASE("a poached link is paler than a patty of the same mass, and acid sets both alike (cooked-pork-four-lots)") {
    const auto p = middle();
    const auto cooked = [&](Cook way) { return batch_colour(pork(), 4.7, 24, 3, way, 71, p); };
    const BatchColour pan = cooked(Cook::pan), poached = cooked(Cook::poach);
    CHECK(poached.cooked.L > pan.cooked.L + 2);
    CHECK(poached.cooked.L < pan.cooked.L + 7);
    CHECK(poached.looks_rested == pan.looks_rested);
}

TEST_CASE("fat pales raw meat all the way; the cooked base is held outside its table") {
    const auto with_fat = [](double share) {
        Material m = pork();
        m[Amount::meat_fat] = 1000 * share;
        return coloured(m);
    };
    for (double share = 0; share < 0.6; share += 0.05) CHECK(with_fat(share + 0.05).raw.L > with_fat(share).raw.L);
    CHECK(with_fat(0.6).cooked == with_fat(0.25).cooked);
    CHECK(with_fat(0).cooked == with_fat(0.10).cooked);
    CHECK_FALSE(with_fat(0.15).cooked == with_fat(0.20).cooked);
}

// What the survey's people say of these swatches, not what the leaf was called before: most say khaki or drab where a* is -3 to -8.
TEST_CASE("colour words up to a* 8 are those of the survey") {
    CHECK(colour_word(lab_of_bytes(0x82, 0x7c, 0x57)) == "khaki");
    CHECK(colour_word(lab_of_bytes(0x81, 0x82, 0x5b)) == "khaki");
    CHECK(colour_word(lab_of_bytes(0x81, 0x83, 0x5b)) == "khaki");
    CHECK(colour_word(lab_of_bytes(0x5a, 0x5a, 0x3c)) == "khaki");  // green of two in five, olive or khaki of half
    CHECK(colour_word(lab_of_bytes(0x6b, 0x6e, 0x37)) == "olive");
    CHECK(colour_word(lab_of_bytes(0x5f, 0x70, 0x49)) == "green");
    CHECK(colour_word(lab_of_bytes(0x66, 0x4e, 0x33)) == "brown");
    CHECK(colour_word({60, 0, 8}) == "greyish");
    CHECK(colour_word({57.5, -3.2, 17.2}) == "khaki");
    CHECK(colour_word({49.3, -3.4, 23.3}) == "khaki");
    CHECK(colour_word({58.6, -0.3, 25.2}) == "khaki");
    CHECK(colour_word({45, -12, 22}) == "green");
    CHECK(colour_word({40, -15, 25}) == "green");
    CHECK(colour_word({65, -12, 20}) == "pale green");
    CHECK(colour_word({40, 8, 15}) == "brown");
    CHECK(colour_word({69, 3, 16}) == "tan");
}

TEST_CASE("the share of names that say so is a share, and high in the midst of a word") {
    CHECK(surveyed_name(lab_of_bytes(0x6e, 0x75, 0x0e)).word == "olive");  // what the survey says olive of most
    for (double L = 30; L < 90; L += 7)
        for (double a = -25; a <= 8; a += 3)
            for (double b = 0; b < 40; b += 5) {
                const ColourName name = surveyed_name({L, a, b});
                CHECK(name.share >= 0);
                CHECK(name.share <= 1);
                CHECK_FALSE(name.word.empty());
                double all = 0, before = 1;
                for (const auto& said : surveyed_names({L, a, b})) {
                    CHECK(said.share <= before);
                    all += before = said.share;
                }
                CHECK(all == Approx(1));
            }
}

TEST_CASE("words of red meat") {
    CHECK(colour_word({64, 5.3, 7.9}) == "tan");
    CHECK(colour_word({54, 5, 6}) == "pink");  // raw poultry
    CHECK(colour_word({64, 8.6, 11}) == "pink");
    CHECK(colour_word({50, 25, 25}) == "red");
    CHECK(colour_word({42, 19.5, 10.5}) == "red");  // raw beef
    CHECK(colour_word({69, 15, 16}) == "pink");
    CHECK(colour_word(coloured(pork()).raw) == "pink");
}

TEST_CASE("raw white meat is pale pink, cooked red meat grey-brown, and neither is khaki") {
    CHECK(colour_word({54, 5, 10}, Doneness::raw) == "pale pink");   // ground chicken breast
    CHECK(colour_word({65, 7, 10}, Doneness::raw) == "pale pink");   // pork with its fat
    CHECK(colour_word({53, 7, 13.6}) == "grey-brown");               // beef, cooked
    CHECK(colour_word({43, 6, 10}) == "grey-brown");                 // game
    CHECK(colour_word({47, 6, 9}, Doneness::raw) == "pale pink");    // turkey breast
    CHECK(colour_word({54, -0.5, 10}, Doneness::raw) == "greyish");  // cod with salmon
    CHECK(colour_word({57.5, -3.2, 17.2}, Doneness::raw) == "khaki");
    CHECK(colour_word({45, -12, 22}, Doneness::raw) == "green");
}

TEST_CASE("the word of the headline is what most people say") {
    for (double L = 30; L < 90; L += 7)
        for (double a = -25; a <= 8; a += 3)
            for (double b = 5; b < 40; b += 5) {
                const auto said = surveyed_names({L, a, b});
                if (!said.empty()) CHECK(surveyed_name({L, a, b}).word == said.front().word);
            }
}

}  // namespace colour_test
