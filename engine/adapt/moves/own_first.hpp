// What is there already, or stands on the list, is moved for a want before anything else comes in.
#pragma once

#include "adapt/moves/problem.hpp"

namespace standin {

/// Takes back what more of a strong acid of the formula's own makes needless, and opens the lean meat that the list names.
void own_food_first(AskedRoles& asked, const Problem& problem, const Stock& stock, const Distance& distance, const Context& context,
                    Leeway leeway);

/// Whether the list names lean meat of an animal that is in the formula, and not in it yet.
bool lists_another_cut(const Formula& formula, const Stock& stock);

/// What raising a line costs where the list names other meat and not this: what a maker wrote down comes first.
double price_of_unlisted_meat(const Line& line, const Stock& stock, const Context& context);

/// What raising a lean line costs for who wants it leaner and has a leaner cut of the same animal by him.
double price_beside_leaner(const Line& line, const Stock& stock, const Distance& distance, const Context& context);

}  // namespace standin
