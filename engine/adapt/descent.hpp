// The way down: from one set of grams to the best near it.
#pragma once

#include "adapt/task.hpp"

namespace standin {

/// Minimises the length of the rows plus prices under the limits, from `y`. Each round makes the rows linear and solves what is left
/// exactly: length of linear rows plus prices, within the box and the linear limits, is convex. Steps that do not keep their promise are
/// shortened. Stops when the linear picture promises less than `gain` noticeable differences, or as
/// soon as it is plain that the least distance stays above `enough`.
Trial descend(const Task& task, std::vector<double> y, double gain, double enough);

}  // namespace standin
