// The mixed integer solver against enumeration: every way to set the whole variables, and for each the best of the others by hand.
#include "optimize/mixed_integer.hpp"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>
#include <random>

#include "support/catch.hpp"

using namespace standin;

namespace mixed_integer_test {

constexpr double close_enough = 1e-6;

// Whole variables, and one that is not: for given whole ones its best is at an end of what the rows leave it.
MixedInteger random_programme(std::uint64_t seed) {
    std::mt19937_64 random(seed);
    const auto between = [&](double a, double b) { return a + (b - a) * static_cast<double>(random() >> 11) * 0x1.0p-53; };
    MixedInteger programme;
    const std::size_t count = 2 + random() % 5;
    for (std::size_t v = 0; v < count; ++v) programme.variables.push_back({between(-2, 6), 0, static_cast<double>(1 + random() % 3), true});
    programme.variables.push_back({between(-1, 4), 0, between(0.5, 3), false});
    const std::size_t rows = 1 + random() % 4;
    for (std::size_t r = 0; r < rows; ++r) {
        MixedInteger::Row row;
        for (std::size_t v = 0; v < programme.variables.size(); ++v)
            if (random() % 3 != 0) row.parts.emplace_back(v, between(-0.5, 3));
        row.room = between(-0.5, 5);
        programme.rows.push_back(std::move(row));
    }
    return programme;
}

double value_of(const MixedInteger& programme, const std::vector<double>& x) {
    double value = 0;
    for (std::size_t v = 0; v < x.size(); ++v) value += programme.variables[v].gain * x[v];
    return value;
}

double breach(const MixedInteger& programme, const std::vector<double>& x) {
    double most = -std::numeric_limits<double>::infinity();
    for (const auto& row : programme.rows) {
        double used = -row.room;
        for (const auto& [v, by] : row.parts) used += by * x[v];
        most = std::max(most, used);
    }
    return most;
}

// The best value with the last variable free and the others as they stand; nothing where the rows leave it no room.
std::optional<double> best_last(const MixedInteger& programme, std::vector<double> x) {
    const std::size_t last = x.size() - 1;
    double low = programme.variables[last].low, high = programme.variables[last].high;
    for (const auto& row : programme.rows) {
        double used = 0, by_last = 0;
        for (const auto& [v, by] : row.parts) (v == last ? by_last : used) += v == last ? by : by * x[v];
        if (by_last > 0) high = std::min(high, (row.room - used) / by_last);
        else if (by_last < 0) low = std::max(low, (row.room - used) / by_last);
        else if (used > row.room + 1e-9) return std::nullopt;
    }
    if (low > high + 1e-9) return std::nullopt;
    x[last] = programme.variables[last].gain > 0 ? high : low;
    return value_of(programme, x);
}

std::optional<double> enumerated(const MixedInteger& programme) {
    std::optional<double> best;
    std::vector<double> x(programme.variables.size(), 0.0);
    const std::function<void(std::size_t)> set = [&](std::size_t v) {
        if (v + 1 == x.size()) {
            if (const auto value = best_last(programme, x); value && (!best || *value > *best)) best = value;
            return;
        }
        for (double n = 0; n <= programme.variables[v].high; ++n) {
            x[v] = n;
            set(v + 1);
        }
    };
    set(0);
    return best;
}

TEST_CASE("oracle: the mixed integer solver finds what enumeration finds") {
    std::size_t solved = 0, none = 0;
    for (std::uint64_t seed = 1; seed <= 300; ++seed) {
        const MixedInteger programme = random_programme(seed);
        const auto expected = enumerated(programme);
        const auto found = best_of(programme);
        INFO("seed " << seed);
        REQUIRE(found.has_value() == expected.has_value());
        if (!found) {
            ++none;
            continue;
        }
        ++solved;
        CHECK(breach(programme, *found) < close_enough);
        CHECK(std::abs(value_of(programme, *found) - *expected) < close_enough);
        for (std::size_t v = 0; v + 1 < found->size(); ++v) CHECK((*found)[v] == std::round((*found)[v]));
    }
    CHECK(solved > 150);
    CHECK(none > 5);
}

}  // namespace mixed_integer_test
