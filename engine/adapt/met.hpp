// When a goal counts as met, and how likely: judged by what is shown, the medians and the draws.
#pragma once

#include "adapt/yardstick.hpp"
#include "standin/advice.hpp"

namespace standin {

/// How far from its target a goal still counts as met, in the property's unit: words a little, conditions not at all but for the last
/// shown figure.
double allowed(const Goal& goal, const Yardstick& yardstick);

/// `before` and `after` are what is shown of the goal's property; the states are those of base and variant at the same draws.
WantResult judged(const Goal& goal, const Yardstick& yardstick, double before, double after, const std::vector<State>& base,
                  const std::vector<State>& variant);

bool meets_all(const Variant& variant);

}  // namespace standin
