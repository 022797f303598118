// Fat that goes with a missing cut: turkey breast for pork shoulder brings none, and back fat or oil of the list makes up for it.
#pragma once

#include "adapt/moves/problem.hpp"
#include "substitute/stand_ins.hpp"
#include "substitute/stock.hpp"

namespace standin {

/// Grams of fat that lines which are not there had, and what the list has for them lacks.
double fat_lost_with_lean(const Problem& problem, const Stock& stock, const Distance& distance, const Context& context);

/// What stands in for a missing fat line may make up for `lost` as well.
void make_room_for_fat(Problem& problem, double lost, const Stock& stock);

/// Lean leg and back fat for shoulder: who wants it leaner takes the leg alone.
bool brings_fat_beside(const Candidate& candidate, const Knowledge& knowledge);

}  // namespace standin
