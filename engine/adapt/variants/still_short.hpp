// What an answer does not come to, and what would: acid that still keeps the meat from holding, leaf that does not make it green.
#pragma once

#include <vector>

#include "adapt/distance/distance.hpp"
#include "standin/prediction.hpp"

namespace standin {

/// Of a variant, asked for the goals of `distance`. `predicted`: what is shown of it.
std::vector<Reason> what_is_still_short(const Formula& variant, const Distance& distance, const Prediction& predicted,
                                        const Context& context);

}  // namespace standin
