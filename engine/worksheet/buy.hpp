// The shopping list.
#pragma once

#include <optional>
#include <vector>

#include "knowledge/index/knowledge.hpp"
#include "standin/sheet.hpp"

namespace standin {

/// One an ingredient, in the order of the formula. As bought = as weighed over the edible share, unless the formula itself weighs the food
/// untrimmed; then whole bunches, heads and pieces, packets, or the next step of weight, all up (knowledge/models/bench.json).
/// Where it is said what is on hand, only what is lacking.
std::vector<Purchase> purchases_of(const Formula& formula, const std::optional<Inventory>& have, const Knowledge& knowledge);

}  // namespace standin
