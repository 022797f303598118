// What a measured batch teaches about everything uncertain in it: an ensemble Kalman update of the deviates behind the draws.
//
//   d' = d + K (m + e - y),   K = cov(d, y) / (var y + var e)
//
// y: the property at each draw; m: what was measured, e its own error; d: the deviates of one uncertain quantity. In several small steps
// (e inflated, so that they add up to one measurement), since y is not linear in d: Emerick and Reynolds 2013, Computers & Geosciences
// 55:3. Quantities that hardly go with the property stay as they are: so few draws would only learn noise.
#pragma once

#include <vector>

#include "evaluate/evaluator.hpp"
#include "evaluate/state_figure.hpp"

namespace standin {

struct Measured {
    StateFigure figure;
    Band value;
};

/// The deviates that `measured` of a batch of `formula` leaves, where those of `before` were. They hold for any formula that shares what
/// is uncertain.
Learned learned_from(const Formula& formula, const std::vector<Measured>& measured, const Knowledge& knowledge, std::size_t draws,
                     std::uint64_t seed, const Deviates& before = {});

}  // namespace standin
