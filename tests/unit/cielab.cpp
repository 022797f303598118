// CIELAB, sRGB and CIEDE2000: round trips and the laws a difference obeys.
#include "models/cielab.hpp"

#include <cmath>
#include <random>

#include "support/catch.hpp"

using namespace standin;

TEST_CASE("every display colour survives the way to CIELAB and back") {
    for (int r = 0; r < 256; r += 15)
        for (int g = 0; g < 256; g += 15)
            for (int b = 0; b < 256; b += 15) {
                const Lab lab = lab_of_bytes(r, g, b);
                CHECK((srgb_bytes(lab) == std::array<int, 3>{r, g, b}));
            }
}

TEST_CASE("CIELAB and XYZ are inverse") {
    std::mt19937_64 random(7);
    std::uniform_real_distribution<double> lightness(0, 100), opponent(-60, 60);
    for (int i = 0; i < 500; ++i) {
        const Lab lab{lightness(random), opponent(random), opponent(random)};
        const Lab back = lab_of(xyz_of(lab));
        CHECK(back.L == Approx(lab.L).margin(1e-9));
        CHECK(back.a == Approx(lab.a).margin(1e-9));
        CHECK(back.b == Approx(lab.b).margin(1e-9));
    }
}

TEST_CASE("hex is clipped to what a screen can show") {
    CHECK(hex_of({100, 0, 0}) == "#ffffff");
    CHECK(hex_of({0, 0, 0}) == "#000000");
    CHECK(hex_of({50, -120, 0}).size() == 7);
    CHECK(hex_of({-5, 0, 0}) == "#000000");
}

TEST_CASE("hue and chroma") {
    CHECK(hue_of({50, 0, 0}) == 0);
    CHECK(hue_of({50, 0, 10}) == Approx(90));
    CHECK(hue_of({50, -10, 0}) == Approx(180));
    CHECK(hue_of({50, 0, -10}) == Approx(270));
    CHECK(chroma_of({50, 3, -4}) == Approx(5));
}

TEST_CASE("CIEDE2000 is symmetric, zero only on itself, finite for greys") {
    std::mt19937_64 random(11);
    std::uniform_real_distribution<double> lightness(0, 100), opponent(-80, 80);
    for (int i = 0; i < 1000; ++i) {
        const Lab x{lightness(random), opponent(random), opponent(random)}, y{lightness(random), opponent(random), opponent(random)};
        CHECK(ciede2000(x, y) == Approx(ciede2000(y, x)).margin(1e-9));
        CHECK(ciede2000(x, x) == 0);
        CHECK(ciede2000(x, y) > 0);
    }
    CHECK(ciede2000({50, 0, 0}, {50, 0, 0}) == 0);
    CHECK(std::isfinite(ciede2000({0, 0, 0}, {100, 0, 0})));
}
