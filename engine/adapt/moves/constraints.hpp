// What the moves together must keep to, as linear limits on their grams.
#pragma once

#include "adapt/moves/problem.hpp"

namespace standin {

/// Stock that several moves draw on, lines raised for several others, the meat, salt per kilo of meat, and caps on the variant's own mass:
/// binders, strong foods by the kilo, salt, and what the chosen rule set limits. `problem` has its moves already.
std::vector<LinearConstraint> constraints_of(const Problem& problem, const Stock& stock, const Distance& distance, const Context& context);

/// A limit that keeps `of` at least or at most `bound` times `per`: linear, as both are sums over the batch.
LinearConstraint ratio_limit(const Problem& problem, Amount of, Amount per, double bound, bool at_least);

}  // namespace standin
