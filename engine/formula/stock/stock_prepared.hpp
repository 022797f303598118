// What is on hand prepared, and what comes along with a food: "ramps, blanched, 200 g", "celery with leaves, 1 head".
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "knowledge/index/knowledge.hpp"
#include "standin/formula.hpp"

namespace standin {

/// Grams that one gram, so prepared, came of: blanched leaves, roasted chiles, fried mushrooms. Nothing where it is kept from being counted
/// so: cooked meat and eggs, and what preparing brought salt, acid or dryness to.
std::optional<double> picked_for(const std::vector<Prepared>& steps, const Ingredient& ingredient, const Knowledge& knowledge);

/// Of the steps those that take their time at the bench and are not done once more: blanched, toasted, squeezed, and no mere cut.
std::vector<Prepared> done_already(const std::vector<Prepared>& steps, const Ingredient& ingredient, const Knowledge& knowledge);

struct WithPart {
    std::string line;  ///< without it
    bool leaf = true;  ///< its leaves, greens or fronds, and not its roots or stems
};

/// "fennel bulb 1 with fronds", "2 bottes de radis avec fanes": another part of the same plant, on hand as well.
std::optional<WithPart> with_part(std::string_view line, const Knowledge& knowledge);

/// The leaves of the plant where they are a food of their own: of celery, fennel, radish, beet. Null: they are not.
const Ingredient* leaves_of(const Ingredient& food, const Knowledge& knowledge);

}  // namespace standin
