#include "core/band.hpp"

#include "core/draws.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace band_test {

constexpr double z95 = 1.6448536269514722;

const Band bands[] = {{1, 2, 3}, {90, 100, 120}, {-1, 0, 2}, {0, 0.5, 1}, {0.5, 0.5, 4}, {2, 8, 8}, {5.45, 5.7, 6.05}, {1, 10, 1000}};

TEST_CASE("a band's own numbers are met at its percentiles") {
    for (const auto& band : bands) {
        CAPTURE(band.low, band.mid, band.high);
        CHECK(at(band, 0) == band.mid);
        CHECK(at(band, -z95) == Approx(band.low));
        CHECK(at(band, z95) == Approx(band.high));
    }
}

TEST_CASE("draws from a band give the band back") {
    Draws draws(20000, 3);
    for (const auto& band : bands) {
        std::vector<double> values;
        for (const double z : draws.of("x")) values.push_back(at(band, z));
        const Band back = band_of(values);
        CAPTURE(band.low, band.mid, band.high);
        CHECK(back.low == Approx(band.low).epsilon(1e-3).margin(1e-3));
        CHECK(back.mid == Approx(band.mid).epsilon(1e-3).margin(1e-3));
        CHECK(back.high == Approx(band.high).epsilon(1e-3).margin(1e-3));
    }
}

TEST_CASE("a band rises with z") {
    for (const auto& band : bands)
        for (double z = -4; z < 4; z += 0.25) CHECK(at(band, z) <= at(band, z + 0.25));
}

TEST_CASE("a wide positive band stays positive, a narrow one is a straight line") {
    CHECK(at({1, 2, 3}, -6) > 0);
    CHECK(at({1, 10, 1000}, -6) > 0);
    CHECK(at({90, 100, 120}, -z95 / 2) == Approx(95));
    CHECK(at({90, 100, 120}, z95 / 2) == Approx(110));
    CHECK(at({1, 10, 1000}, z95 / 2) == Approx(100));
}

TEST_CASE("percentiles are linear between order statistics") {
    std::vector<double> values;
    for (int i = 100; i >= 0; --i) values.push_back(i);
    CHECK(band_of(values) == Band{5, 50, 95});
    const Band two = band_of({4, 2});
    CHECK(two.low == Approx(2.1));
    CHECK(two.mid == Approx(3));
    CHECK(two.high == Approx(3.9));
    CHECK(band_of({7}) == Band{7, 7, 7});
}

TEST_CASE("exact and scaled bands") {
    CHECK(exactly(3) == Band{3, 3, 3});
    CHECK(scaled({1, 2, 3}, 2) == Band{2, 4, 6});
}

}  // namespace band_test
