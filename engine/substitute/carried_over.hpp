// What was done to a line and is done to its stand-in as well: only what can be done to that food.
#pragma once

#include "knowledge/index/knowledge.hpp"
#include "standin/formula.hpp"

namespace standin {

/// Whether `step`, done to `line`, is done to `food` in its place. A knife goes through what is firm; heat and water are for what grew or
/// lived as the line did: nobody grates juice, chops a powder or roasts the powder that stands in for a roasted fruit.
bool carries_over(const Prepared& step, const Ingredient& line, const Ingredient& food, const Knowledge& knowledge);

/// Whether `food` is bought whole and stands in for a powder: nobody kneads whole seeds in for it.
bool to_be_ground(const Ingredient& line, const Ingredient& food, const Knowledge& knowledge);

/// Whether the line is a dried fruit or vegetable and `food` is none and is never dried by hand: by its weight no swap is known.
bool would_have_to_be_dried(const Line& line, const Ingredient& food, const Knowledge& knowledge);

}  // namespace standin
