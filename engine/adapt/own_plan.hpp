// How far a formula of the maker's own lies from another, by the advisor's measure.
#pragma once

#include "standin/advice.hpp"
#include "substitute/context.hpp"

namespace standin {

/// As if `plan` were a variant of `base`: what is felt, what lines are lost, what swaps ask to be trusted.
DistanceParts distance_of_plan(const Formula& base, const Formula& plan, const Context& context);

}  // namespace standin
