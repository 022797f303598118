// Numbers that cannot all be had: each as far as something is found that has it, those that are had most easily first.
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "adapt/distance/distance.hpp"
#include "core/band.hpp"
#include "standin/advice.hpp"

namespace standin {

/// What is found to have such goals, the nearest first; no variants where nothing is.
using Having = std::function<AdaptAnswer(const std::vector<Goal>& goals)>;

/// What has the goals of `distance` once those that cannot be had beside the others are eased as little as that takes. `base`: as it
/// stands in the tables. Nothing where words or values themselves are asked for, or nothing goes any of the way.
std::optional<AdaptAnswer> nearest_by_numbers(const Distance& distance, const PerProperty<Band>& base, const Having& having);

}  // namespace standin
