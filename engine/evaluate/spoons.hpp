// Small weights in level spoons, for kitchens that weigh nothing so light.
#pragma once

#include <string>

#include "knowledge/records/records.hpp"

namespace standin {

/// "1 1/4 tsp", "2 tbsp ground": `grams` of the food by the spoon weight of its record; empty above 20 g and where none is known.
std::string in_spoons(const Ingredient& food, double grams);

}  // namespace standin
