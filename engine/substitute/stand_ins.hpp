// Stand-ins for one line of a formula: who, how prepared, and how many grams carry the line's dose.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "knowledge/index/swap_graph.hpp"
#include "substitute/context.hpp"
#include "substitute/partner.hpp"

namespace standin {

using MayUse = std::function<bool(const Ingredient&)>;

struct Candidate {
    Line food;  ///< the stand-in with its preparations, at the grams for its share of the line, weighed before preparation
    Role role = Role::green;
    double closeness = 0;
    std::vector<std::size_t> swaps;      ///< the path, indexes in Records::swaps
    std::optional<PartnerFood> partner;  ///< weighed in beside `food.grams` of it, in proportion where less of it is taken
    double share = 1;                    ///< of the line it may stand for; the rest of the line stays, or is left to others
    double least_grams = 0;              ///< less of it for its share would leave a hole in the paste
    double most_grams = 0;               ///< more of it no maker would weigh; infinity where nothing bounds it
    double carries = 1;                  ///< of the equal dose, at `food.grams`
    double felt = 1;  ///< of its share's dose; less where the line is over what a kilo takes of it, and the stand-in may not follow
    std::optional<Reason> bounded;  ///< why its grams are not those of equal dose; nothing: they are
    bool trade = false;             ///< what makers take without asking

    /// Of the trade by itself, not by way of a third food.
    bool of_custom() const { return trade && swaps.size() == 1; }
    /// Its swap names two foods, which come in together.
    bool in_two_parts() const { return partner && partner->named; }
};

/// A stand-in that is known and was not proposed.
struct Refusal {
    enum class By { process, weight };
    Line food;
    By by = By::process;
    Reason why{};  ///< what it would ask of the making, or the weight it would take
};

struct Candidates {
    std::vector<Candidate> fit;
    std::vector<Refusal> refused;  ///< that fit in no other way
};

/// Every stand-in reachable for line number `line` in any of its ingredient's roles, the main role first, nearest first within a role; each
/// food (ingredient with preparations, and partner) once. `may_use` says what may be brought in. Preparations of the line carry over where
/// they fit, and those that a condition of the swap asks for are done. What `may_match` names and stands in by no swap is matched roughly,
/// less closely where one is poured and the other is not: what it brings of the role is put right, the taste is another.
Candidates candidates_for(const Formula& formula, std::size_t line, const SwapGraph& graph, const Nominal& nominal, const MayUse& may_use,
                          const MayUse& may_match = {});

/// A food as it comes in by itself in `role`: prepared as the closest swap that brings it asks for.
Line brought_in(const Ingredient& food, Role role, const Knowledge& knowledge);

/// A gram of the stand-in as it counts beside `line`: where a role has no common currency (herbs, nuts, alliums, spices), the grams of
/// equal dose carry the line's dose.
Material counted_as(const Candidate& candidate, const Line& line, const Nominal& nominal);

/// What tells one food from another: the ingredient and its preparations.
std::string key_of(const Line& food);

/// Each food once (and once with each partner that a swap names), in the order they stand. `one_form`: a food that can be prepared in
/// several ways comes in the one that can stand for most of the line; else each way is a food of its own.
std::vector<Candidate> once_each(const std::vector<Candidate>& all, bool one_form);

/// Position of an ingredient in Records::ingredients.
std::size_t index_of(const Knowledge& knowledge, std::string_view ingredient);

}  // namespace standin
