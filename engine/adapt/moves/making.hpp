// Ways of making the batch, as levers: what a want makes worth doing otherwise, and at what price.
#pragma once

#include "adapt/moves/problem.hpp"

namespace standin {

inline constexpr double cold_c = 2, tacky_min = 3;  // of a mass that is made to bind; common practice

/// The formula's own way with everything done right that costs only care (order, mixing, cold, the core no hotter than it must be), and
/// beside it the ways with what a maker would notice: another plate, a shorter rest, where the
/// models say that it moves what is wanted. Care at its price is never worse by what anyone
/// could notice, so there is no way without it. At least one way, each with its state at the middle.
std::vector<ProcessOption> ways_of_making(const Formula& formula, const Distance& distance, const Context& context);

}  // namespace standin
