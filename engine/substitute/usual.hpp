// How much of a food a kilo of plain sausage usually has: for who asks of a food and has no formula.
#pragma once

#include "knowledge/index/knowledge.hpp"

namespace standin {

/// Grams in a kilo, by what the food is there for, its form and its strength; never more than a kilo takes of it.
double usual_grams(const Ingredient& food, const Knowledge& knowledge);

}  // namespace standin
