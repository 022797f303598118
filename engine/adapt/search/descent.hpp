// The best grams near a start: sequential quadratic programming on Gauss-Newton rows.
#pragma once

#include "adapt/search/subproblem.hpp"

namespace standin {

/// Minimises the sum of the squared rows plus prices under the limits, from `y`. Each round makes the rows linear and solves the convex
/// quadratic programme that is left exactly; a backtracking line search shortens steps that gain too little of what was predicted, and a
/// rank one update learns the curvature that the linear rows do not have. Stops when the predicted gain is less than `gain`, or as soon as
/// it is plain that the least cost stays above `cutoff`.
/// `by_move`: with the slopes of the moves themselves, for the last of the way.
Iterate descend(const Subproblem& subproblem, std::vector<double> y, double gain, double cutoff, bool by_move = false);

}  // namespace standin
