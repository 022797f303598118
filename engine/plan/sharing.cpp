#include "plan/sharing.hpp"

#include <algorithm>
#include <limits>
#include <set>

namespace standin {
namespace {

constexpr double kilo = 1000;

}  // namespace

Alone alone(const Column& column, const std::map<std::string, double>& stock) {
    Alone best{std::numeric_limits<double>::infinity(), {}};
    for (const auto& [food, a_gram] : column.a_gram) {
        const auto there = stock.find(food);
        if (there == stock.end() || !(a_gram > 0)) continue;
        const double grams = there->second / a_gram;
        if (grams < best.grams) best = {grams, food};
    }
    return best;
}

MixedInteger sharing_programme(const Columns& columns, const std::vector<std::optional<double>>& asked_g, const Worth& worth) {
    MixedInteger programme;
    const std::size_t count = columns.all.size();
    const auto amount = [](std::size_t c) { return c; };
    const auto made = [&](std::size_t c) { return count + c; };
    const auto met = [&](std::size_t f) { return 2 * count + f; };
    std::vector<double> most(count);
    for (std::size_t c = 0; c < count; ++c) {
        const auto& asked = asked_g[columns.all[c].formula];
        most[c] = std::min(alone(columns.all[c], columns.stock).grams, asked ? *asked : worth.most_g) / kilo;
        const double near = worth.half_at / (worth.half_at + columns.all[c].distance);
        programme.variables.push_back({worth.a_kilo * near, 0, most[c], false});
    }
    for (std::size_t c = 0; c < count; ++c) {
        const double near = worth.half_at / (worth.half_at + columns.all[c].distance);
        programme.variables.push_back({worth.any * near, 0, 1, true});
    }
    for (const auto& asked : asked_g) programme.variables.push_back({asked ? worth.asked : 0, 0, asked ? *asked / kilo : 0, false});

    std::set<std::string> foods;
    for (std::size_t c = 0; c < count; ++c) {
        const auto& asked = asked_g[columns.all[c].formula];
        const double least = std::min(worth.least_g, asked.value_or(worth.least_g)) / kilo;
        programme.rows.push_back({{{amount(c), 1}, {made(c), -most[c]}}, 0});
        programme.rows.push_back({{{amount(c), -1}, {made(c), least}}, 0});
        for (const auto& [food, a_gram] : columns.all[c].a_gram)
            if (a_gram > 0 && columns.stock.count(food)) foods.insert(food);
    }
    for (std::size_t f = 0; f < asked_g.size(); ++f) {
        MixedInteger::Row one{{}, 1}, up_to{{{met(f), 1}}, 0};
        for (std::size_t c = 0; c < count; ++c) {
            if (columns.all[c].formula != f) continue;
            one.parts.emplace_back(made(c), 1);
            up_to.parts.emplace_back(amount(c), -1);
        }
        programme.rows.push_back(std::move(one));
        programme.rows.push_back(std::move(up_to));
    }
    for (const auto& food : foods) {
        MixedInteger::Row row{{}, columns.stock.at(food) / kilo};
        for (std::size_t c = 0; c < count; ++c)
            if (const auto takes = columns.all[c].a_gram.find(food); takes != columns.all[c].a_gram.end() && takes->second > 0)
                row.parts.emplace_back(amount(c), takes->second);
        programme.rows.push_back(std::move(row));
    }
    return programme;
}

Shares shared(const Columns& columns, const std::vector<std::optional<double>>& asked_g, const Worth& worth) {
    const MixedInteger programme = sharing_programme(columns, asked_g, worth);
    Shares shares;
    shares.grams.assign(columns.all.size(), 0);
    const auto best = best_of(programme);
    if (!best) return shares;  // never: nothing made keeps every row
    for (std::size_t v = 0; v < best->size(); ++v) shares.worth += programme.variables[v].gain * (*best)[v];
    for (std::size_t c = 0; c < shares.grams.size(); ++c)
        if ((*best)[shares.grams.size() + c] > 0.5) shares.grams[c] = (*best)[c] * kilo;
    return shares;
}

}  // namespace standin
