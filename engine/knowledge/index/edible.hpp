// How much of a food as it is sold is eaten.
#pragma once

#include "knowledge/records/records.hpp"

namespace standin {

/// The share left when what is cut away is off; 1 where nothing is, and of nuts, which are sold shelled.
double edible_share(const Ingredient& ingredient);

/// Whether makers weigh it for a list as they weigh it for a formula: a herb, as it lies on the board.
bool weighed_as_used(const Ingredient& ingredient);

}  // namespace standin
