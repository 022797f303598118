// Preparations that neither change the mass nor cook: for the weight it is all one whether they were done before or after weighing.
#pragma once

#include "knowledge/index/knowledge.hpp"
#include "standin/formula.hpp"

namespace standin {

/// Whether `prepared`, done to `ingredient`, leaves its mass and its protein as they were.
bool changes_nothing(const Prepared& prepared, const Ingredient& ingredient, const Knowledge& knowledge);

}  // namespace standin
