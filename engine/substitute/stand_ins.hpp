// Stand-ins for one line of a formula: who, how prepared, and how many grams carry the line's dose.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "knowledge/swap_graph.hpp"
#include "substitute/context.hpp"

namespace standin {

struct Candidate {
    Line food;  ///< the stand-in with its preparations, at the grams of equal dose, weighed before preparation
    Role role = Role::green;
    double closeness = 0;
    std::vector<std::size_t> swaps;  ///< the path, indexes in Records::swaps
};

struct Candidates {
    std::vector<Candidate> fit;
    std::vector<Candidate> refused;  ///< a condition of whose swap the process goes against, and that fit in no other way
};

/// Every stand-in reachable for `line` in any of its ingredient's roles, the main role first, nearest first within a role; each food
/// (ingredient with preparations) once. `may_use` says what may be brought in. Preparations of the line carry over where they fit, and
/// those that a condition of the swap asks for are done.
Candidates candidates_for(const Line& line, const Process& process, const SwapGraph& graph, const Nominal& nominal,
                          const std::function<bool(const Ingredient&)>& may_use);

/// A food as it comes in by itself in `role`: prepared as the closest swap that brings it asks for.
Line brought_in(const Ingredient& food, Role role, const Knowledge& knowledge);

/// A gram of the stand-in as it counts beside `line`: where a role has no common currency (herbs, nuts, alliums, spices), the grams of
/// equal dose carry the line's dose.
Material counted_as(const Candidate& candidate, const Line& line, const Nominal& nominal);

/// What tells one food from another: the ingredient and its preparations.
std::string key_of(const Line& food);

/// Position of an ingredient in Records::ingredients.
std::size_t index_of(const Knowledge& knowledge, std::string_view ingredient);

}  // namespace standin
