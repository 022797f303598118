#include "core/draws.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "support/catch.hpp"

using namespace standin;

namespace draws_test {

double correlation(const std::vector<double>& a, const std::vector<double>& b) {
    const auto dot = [](const auto& x, const auto& y) { return std::inner_product(x.begin(), x.end(), y.begin(), 0.0); };
    return dot(a, b) / std::sqrt(dot(a, a) * dot(b, b));  // both have mean zero
}

TEST_CASE("normal quantiles") {
    // The three test values that Wichura prints with AS 241.
    CHECK(normal_quantile(0.25) == Approx(-0.6744897501960817).epsilon(1e-14));
    CHECK(normal_quantile(0.001) == Approx(-3.090232306167814).epsilon(1e-14));
    CHECK(normal_quantile(1e-20) == Approx(-9.262340089798408).epsilon(1e-14));
    // Standard tables.
    CHECK(normal_quantile(0.5) == 0);
    CHECK(normal_quantile(0.95) == Approx(1.6448536269514722).epsilon(1e-14));
    CHECK(normal_quantile(0.975) == Approx(1.959963984540054).epsilon(1e-14));
}

TEST_CASE("the quantile undoes the distribution function and is odd") {
    for (double p = 0.0005; p < 1; p += 0.0005) {
        const double z = normal_quantile(p);
        CHECK(0.5 * std::erfc(-z / std::sqrt(2.0)) == Approx(p).epsilon(1e-12));
        CHECK(normal_quantile(1 - p) == Approx(-z).epsilon(1e-11).margin(1e-13));
    }
}

TEST_CASE("each name has one deviate in each stratum of equal chance") {
    const std::size_t count = 512;
    Draws draws(count, 7);
    for (const char* name : {"spinach chlorophyll", "pork ph", "acid.pkw"}) {
        std::vector<double> sorted = draws.of(name);
        REQUIRE(sorted.size() == count);
        std::sort(sorted.begin(), sorted.end());
        for (std::size_t i = 0; i < count; ++i)
            CHECK(sorted[i] == Approx(normal_quantile((static_cast<double>(i) + 0.5) / count)).margin(1e-15));
        CHECK(std::accumulate(sorted.begin(), sorted.end(), 0.0) == Approx(0).margin(1e-9));
    }
}

TEST_CASE("a name and a seed decide the deviates, not the order of asking") {
    Draws one(64, 5), two(64, 5), other(64, 6);
    const auto a = one.of("a");
    one.of("b");
    two.of("b");
    CHECK(two.of("a") == a);
    CHECK(one.of("a") == a);
    CHECK(one.of("b") != a);
    CHECK(other.of("a") != a);
}

TEST_CASE("names are next to independent") {
    Draws draws(4096, 1);
    const std::vector<double> first = draws.of("name 0");
    double worst = 0;
    for (int i = 1; i < 60; ++i) worst = std::max(worst, std::abs(correlation(first, draws.of("name " + std::to_string(i)))));
    CHECK(worst < 0.06);  // four standard deviations of chance
}

TEST_CASE("deviates stay where they are while others come") {
    Draws draws(16, 1);
    const std::vector<double>& kept = draws.of("first");
    const double before = kept[3];
    for (int i = 0; i < 1000; ++i) draws.of("more " + std::to_string(i));
    CHECK(&draws.of("first") == &kept);
    CHECK(kept[3] == before);
}

TEST_CASE("the middle is one draw of nothing") {
    Draws middle = Draws::middle();
    CHECK(middle.count() == 1);
    CHECK(middle.of("anything") == std::vector<double>{0});
}

}  // namespace draws_test
