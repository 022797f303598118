// What stops the nearest that was found from going further: the most that a batch takes of a food, or all there is of it.
#pragma once

#include <vector>

#include "standin/formula.hpp"
#include "standin/reason.hpp"
#include "substitute/context.hpp"
#include "substitute/stock.hpp"

namespace standin {

/// A reason for each food that `nearest` has more of than `base` and that stands at its most.
std::vector<Reason> held_at_most(const Formula& base, const Formula& nearest, const Stock& stock, const Context& context);

}  // namespace standin
