// How goals are tightened, round by round, for a plan that misses them once its weights are rounded.
#pragma once

#include <cmath>
#include <utility>
#include <vector>

#include "adapt/goals/request.hpp"

namespace standin {

/// `moved`, each limit three times as far from `from` a round: a step that is smaller than what the rounding takes leads back to the same
/// weights.
inline std::vector<Goal> moved_further(const std::vector<Goal>& from, std::vector<Goal> moved, int round) {
    for (std::size_t g = 0; g < moved.size(); ++g) moved[g].limit = from[g].limit + std::pow(3.0, round) * (moved[g].limit - from[g].limit);
    return moved;
}

}  // namespace standin
