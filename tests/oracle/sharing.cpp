// How a list is shared among sausages, against every choice of ways and every corner of what each choice leaves open.
#include "plan/sharing.hpp"

#include <cmath>
#include <functional>
#include <random>

#include "support/catch.hpp"

using namespace standin;

namespace sharing_test {

struct Garden {
    Columns columns;
    std::vector<std::optional<double>> asked;
};

Garden random_garden(std::uint64_t seed) {
    std::mt19937_64 random(seed * 31 + 7);
    const auto between = [&](double a, double b) { return a + (b - a) * static_cast<double>(random() >> 11) * 0x1.0p-53; };
    Garden garden;
    const char* foods[] = {"a", "b", "c"};
    for (const char* food : foods) garden.columns.stock[food] = random() % 6 == 0 ? 0 : between(50, 900);
    for (std::size_t f = 0; f < 3; ++f) {
        garden.asked.push_back(random() % 3 == 0 ? std::optional(between(400, 6000)) : std::nullopt);
        for (int way = 0; way < 2; ++way) {
            Column column;
            column.formula = f;
            column.distance = between(0, 8);
            for (const char* food : foods)
                if (random() % 2 == 0) column.a_gram[food] = between(0.01, 0.2);
            garden.columns.all.push_back(std::move(column));
        }
    }
    return garden;
}

// a x <= b with n of them an equation, by Gauss; nothing where they do not cross in one point.
std::optional<std::vector<double>> corner(std::vector<std::vector<double>> rows) {
    const std::size_t n = rows.size();
    for (std::size_t i = 0; i < n; ++i) {
        std::size_t pivot = i;
        for (std::size_t r = i; r < n; ++r)
            if (std::abs(rows[r][i]) > std::abs(rows[pivot][i])) pivot = r;
        if (std::abs(rows[pivot][i]) < 1e-12) return std::nullopt;
        std::swap(rows[i], rows[pivot]);
        for (std::size_t r = 0; r < n; ++r) {
            if (r == i) continue;
            const double times = rows[r][i] / rows[i][i];
            for (std::size_t c = i; c <= n; ++c) rows[r][c] -= times * rows[i][c];
        }
    }
    std::vector<double> x;
    for (std::size_t i = 0; i < n; ++i) x.push_back(rows[i][n] / rows[i][i]);
    return x;
}

// The best worth with just these columns made.
std::optional<double> best_with(const Garden& g, const std::vector<std::size_t>& made, const Worth& worth) {
    if (made.empty()) return 0;
    const std::size_t n = made.size();
    std::vector<std::vector<double>> limits;  // a row: n factors, then the room
    double fixed = 0;
    std::vector<double> gain;
    for (std::size_t i = 0; i < n; ++i) {
        const Column& column = g.columns.all[made[i]];
        const auto& asked = g.asked[column.formula];
        const double near = worth.half_at / (worth.half_at + column.distance);
        gain.push_back(worth.a_kilo * near + (asked ? worth.asked : 0));
        fixed += worth.any * near;
        std::vector<double> up(n + 1, 0.0), down(n + 1, 0.0);
        up[i] = 1;
        up[n] = (asked ? *asked : worth.most_g) / 1000;
        down[i] = -1;
        down[n] = -std::min(worth.least_g, asked.value_or(worth.least_g)) / 1000;
        limits.push_back(up);
        limits.push_back(down);
    }
    for (const auto& [food, grams] : g.columns.stock) {
        std::vector<double> row(n + 1, 0.0);
        for (std::size_t i = 0; i < n; ++i)
            if (const auto takes = g.columns.all[made[i]].a_gram.find(food); takes != g.columns.all[made[i]].a_gram.end())
                row[i] = takes->second;
        row[n] = grams / 1000;
        limits.push_back(row);
    }
    std::optional<double> best;
    std::vector<std::size_t> picked;
    const std::function<void(std::size_t)> pick = [&](std::size_t from) {
        if (picked.size() == n) {
            std::vector<std::vector<double>> rows;
            for (const auto r : picked) rows.push_back(limits[r]);
            const auto x = corner(rows);
            if (!x) return;
            for (const auto& row : limits) {
                double used = -row[n];
                for (std::size_t i = 0; i < n; ++i) used += row[i] * (*x)[i];
                if (used > 1e-9) return;
            }
            double value = fixed;
            for (std::size_t i = 0; i < n; ++i) value += gain[i] * (*x)[i];
            if (!best || value > *best) best = value;
            return;
        }
        for (std::size_t r = from; r < limits.size(); ++r) {
            picked.push_back(r);
            pick(r + 1);
            picked.pop_back();
        }
    };
    pick(0);
    return best;
}

double enumerated(const Garden& g, const Worth& worth) {
    double best = 0;
    std::vector<std::size_t> made;
    const std::function<void(std::size_t)> choose = [&](std::size_t f) {
        if (f == g.asked.size()) {
            if (const auto value = best_with(g, made, worth)) best = std::max(best, *value);
            return;
        }
        choose(f + 1);
        for (std::size_t c = 0; c < g.columns.all.size(); ++c) {
            if (g.columns.all[c].formula != f) continue;
            made.push_back(c);
            choose(f + 1);
            made.pop_back();
        }
    };
    choose(0);
    return best;
}

TEST_CASE("oracle: a list is shared as well as by trying everything") {
    const Worth worth;
    std::size_t several = 0;
    for (std::uint64_t seed = 1; seed <= 120; ++seed) {
        const Garden garden = random_garden(seed);
        const Shares shares = shared(garden.columns, garden.asked, worth);
        INFO("seed " << seed);
        CHECK(std::abs(shares.worth - enumerated(garden, worth)) < 1e-5 * (1 + shares.worth));
        std::size_t made = 0;
        for (const auto& [food, grams] : garden.columns.stock) {
            double used = 0;
            for (std::size_t c = 0; c < shares.grams.size(); ++c)
                if (const auto takes = garden.columns.all[c].a_gram.find(food); takes != garden.columns.all[c].a_gram.end())
                    used += takes->second * shares.grams[c];
            CHECK(used <= grams + 1e-3);
        }
        for (const double grams : shares.grams) made += grams > 0;
        several += made > 1;
    }
    CHECK(several > 30);
}

}  // namespace sharing_test
