// What `swaps` proposes for a line of a plain kilo of pork sausage.
#pragma once

#include <algorithm>
#include <map>
#include <sstream>
#include <string>
#include <utility>
#include <vector>

#include "adapt/swaps.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

/// A plain kilo of pork sausage with the line in it; one of its own lines takes the weight. `place` is the number of the line, from 0.
inline standin::Formula batch_with(const std::string& food, double grams, std::size_t& place) {
    std::vector<standin::Line> lines{line("pork-shoulder", 750), line("pork-backfat", 250), line("table-salt", 16),
                                     line("water", 40),          line("black-pepper", 2),   line("garlic", 5)};
    const standin::Role role = knowledge().ingredient(food)->roles.front();
    if (role == standin::Role::lean) lines.front() = line(food, grams);
    else if (role == standin::Role::fat && grams >= 250) lines[1] = line(food, grams);
    auto found = std::find_if(lines.begin(), lines.end(), [&](const standin::Line& l) { return l.ingredient == food; });
    if (found == lines.end()) found = lines.insert(lines.end(), line(food, grams));
    else found->grams = standin::exactly(grams);
    place = static_cast<std::size_t>(found - lines.begin());
    return formula(std::move(lines));
}

/// All of them, in the order shown; asked once for each line.
inline const std::vector<standin::StandIn>& proposed(const std::string& food, double grams) {
    static std::map<std::pair<std::string, double>, std::vector<standin::StandIn>> known;
    const auto [held, fresh] = known.try_emplace({food, grams});
    if (!fresh) return held->second;
    std::size_t place = 0;
    const auto checked = standin::CheckedFormula::of(batch_with(food, grams, place), knowledge());
    REQUIRE(checked);
    static const standin::Evaluator evaluator(knowledge(), 16, 1);
    static const standin::Options options;
    const auto answer = standin::swaps_for_line(*checked, std::to_string(place + 1), {.top = 1000}, {evaluator, options});
    REQUIRE(answer);
    return held->second = answer->stand_ins;
}

/// As much of its kind as a kilo of sausage holds.
inline double usual_grams(const standin::Ingredient& food) {
    const bool strong = food.tissue == standin::Tissue::dry || food.tissue == standin::Tissue::seed;
    switch (food.roles.front()) {
        case standin::Role::lean:
            return 750;
        case standin::Role::herb:
            return strong ? 2 : 15;
        case standin::Role::spice:
            return 2;
        case standin::Role::allium:
        case standin::Role::acid:
        case standin::Role::heat:
            return strong ? 4 : 30;
        case standin::Role::salt:
            return 16;
        case standin::Role::binder:
            return strong ? 15 : 40;  // of two grams of flour for one of starch, both within the legal cap
        default:
            return 40;
    }
}

/// As much of a food as a kilo of sausage holds: of what is strong half of the most, so that what stands in for it has room as well.
inline double sausage_grams(const standin::Ingredient& food) {
    constexpr double half = 0.5;
    return food.most_g_per_kg ? std::min(usual_grams(food), half * food.most_g_per_kg->band.mid) : usual_grams(food);
}

/// The foods of a substitute that is several, joined by a plus.
inline std::vector<std::string> foods_of(const std::string& joined) {
    std::vector<std::string> foods;
    std::istringstream words(joined);
    for (std::string food; std::getline(words, food, '+');) foods.push_back(food);
    return foods;
}
