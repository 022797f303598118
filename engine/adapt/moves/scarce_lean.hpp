// Who wants it leaner and has only so much lean: the batch gets smaller, or lean of another animal comes in.
#pragma once

#include "adapt/distance/asked_roles.hpp"
#include "substitute/stock.hpp"

namespace standin {

/// Which share of the formula's meat a variant has at least.
double least_share_of_meat(const Formula& formula, const Stock& stock, const Distance& distance, Leeway leeway, const Context& context);

/// Whether lean that the list names may come in though the formula has nothing of its animal: where nothing else does what is asked of the
/// fat.
bool other_animal_may_come(const Ingredient& food, const Stock& stock, const Distance& distance, Leeway leeway);

}  // namespace standin
