// What the kitchen knows of the foods on a page.
#pragma once

#include <string>
#include <vector>

#include "evaluate/evaluator.hpp"
#include "standin/kitchen.hpp"
#include "standin/reason.hpp"

namespace standin {

/// A reason for each fact that touches one of `formulas`, the first of which a loss in the pan and a batch pH are of. `weighed`: the
/// page tells what to weigh, so that the scale counts.
std::vector<Reason> kitchen_notes(const Kitchen& kitchen, const std::vector<const Formula*>& formulas, const Evaluator& evaluator,
                                  bool weighed = true);

/// A reason for each measurement of the batch that what is known of such a batch cannot be brought to.
std::vector<Reason> kitchen_doubts(const Kitchen& kitchen, const Formula& formula, const Evaluator& evaluator);

}  // namespace standin
