// The quadratic programme: answers known by hand, and the conditions of a minimum on random ones.
#include "optimize/quadratic.hpp"

#include <cmath>
#include <random>

#include "support/catch.hpp"

using namespace standin;

namespace quadratic_test {

Quadratic square(std::size_t n, std::size_t rows) {
    Quadratic q;
    q.curvature = Matrix(n, n);
    for (std::size_t i = 0; i < n; ++i) q.curvature[i][i] = 1;
    q.slope.assign(n, 0.0);
    q.low.assign(n, -10.0);
    q.high.assign(n, 10.0);
    q.rows = Matrix(rows, n);
    q.room.assign(rows, 0.0);
    q.slack_price = 1000;
    return q;
}

TEST_CASE("quadratic: the foot of a perpendicular, with its multiplier") {
    Quadratic q = square(2, 1);
    q.slope = {-3, -4};  // least at (3, 4) if free
    q.rows[0][0] = 1;
    q.rows[0][1] = 1;
    q.room[0] = 5;  // x + y <= 5
    const Least least = least_of(q, {0, 0});
    CHECK(least.at[0] == Approx(2));
    CHECK(least.at[1] == Approx(3));
    CHECK(least.multipliers[0] == Approx(1));
}

TEST_CASE("quadratic: what cannot be kept is broken as little as it can be") {
    Quadratic q = square(1, 1);
    q.high[0] = 1;
    q.rows[0][0] = -1;
    q.room[0] = -2;  // asks for x >= 2 where 1 is the most
    CHECK(least_of(q, {0}).at[0] == Approx(1));
}

TEST_CASE("quadratic: a start outside the box is brought in") {
    Quadratic q = square(1, 0);
    q.low[0] = 0;
    q.slope[0] = -0.5;
    CHECK(least_of(q, {99}).at[0] == Approx(0.5));
}

TEST_CASE("quadratic: random programmes end where nothing pulls any more") {
    std::mt19937_64 random(5);
    const auto unit = [&] { return static_cast<double>(random() >> 11) * 0x1.0p-52 - 1; };
    for (int trial = 0; trial < 200; ++trial) {
        const std::size_t n = 2 + random() % 25, m = random() % 5;
        Quadratic q = square(n, m);
        Matrix root(n / 2 + 1, n);
        for (std::size_t r = 0; r < root.rows(); ++r)
            for (std::size_t i = 0; i < n; ++i) root[r][i] = unit();
        for (std::size_t i = 0; i < n; ++i) {
            for (std::size_t k = 0; k < n; ++k) {
                q.curvature[i][k] = i == k ? 1e-3 : 0;
                for (std::size_t r = 0; r < root.rows(); ++r) q.curvature[i][k] += root[r][i] * root[r][k];
            }
            q.slope[i] = 3 * unit();
            q.low[i] = 0;
            q.high[i] = 1;
        }
        for (std::size_t j = 0; j < m; ++j) {
            for (std::size_t i = 0; i < n; ++i) q.rows[j][i] = unit();
            q.room[j] = 0.1 + 0.2 * unit();  // some are broken at the start, all can be kept at nothing or near it
        }
        const Least least = least_of(q, std::vector<double>(n, 0.5));
        double over = 0;
        for (std::size_t j = 0; j < m; ++j) {
            double used = -q.room[j];
            for (std::size_t i = 0; i < n; ++i) used += q.rows[j][i] * least.at[i];
            over = std::max(over, used);
            CHECK(least.multipliers[j] >= -1e-9);
            if (used < -1e-7) CHECK(least.multipliers[j] == Approx(0).margin(1e-9));
        }
        for (std::size_t i = 0; i < n; ++i) {
            double pull = q.slope[i];
            for (std::size_t k = 0; k < n; ++k) pull += q.curvature[i][k] * least.at[k];
            for (std::size_t j = 0; j < m; ++j) pull += q.rows[j][i] * least.multipliers[j];
            CAPTURE(trial, i, least.at[i], pull, over);
            if (least.at[i] > 1e-9) CHECK(pull <= 1e-6);
            if (least.at[i] < 1 - 1e-9) CHECK(pull >= -1e-6);
        }
        if (over > 1e-6) {  // then the price of breaking is paid in full
            double paid = 0;
            for (const double multiplier : least.multipliers) paid += multiplier;
            CHECK(paid == Approx(q.slack_price * (1 + over)).epsilon(1e-6));
        }
    }
}

}  // namespace quadratic_test
