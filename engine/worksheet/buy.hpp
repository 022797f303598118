// The shopping list.
#pragma once

#include <vector>

#include "knowledge/knowledge.hpp"
#include "standin/sheet.hpp"

namespace standin {

/// One an ingredient, in the order of the formula. As bought = as weighed over the edible share, unless the formula itself weighs the food
/// untrimmed; then whole bunches, heads and pieces, packets, or the next step of weight, all up (knowledge/models/bench.json).
std::vector<Purchase> purchases_of(const Formula& formula, const Knowledge& knowledge);

}  // namespace standin
