// The way down: from one set of grams to the best near it.
#pragma once

#include "adapt/task.hpp"

namespace standin {

/// Minimises the sum of the squared rows plus prices under the limits, from `y`. Each round makes the rows linear and solves the convex
/// quadratic programme that is left exactly. Steps that do not keep their promise are shortened. Stops when the linear picture promises
/// less than `gain`, or as soon as it is plain that the least cost stays above `enough`.
Trial descend(const Task& task, std::vector<double> y, double gain, double enough);

}  // namespace standin
