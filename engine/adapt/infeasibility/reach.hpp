// When not every want can be met: how near each can be come to, by itself and beside the rest.
#pragma once

#include <functional>
#include <vector>

#include "adapt/search/search.hpp"
#include "standin/advice.hpp"

namespace standin {

/// What a plan shows of a goal's property, at the draw that decides whether the goal is met.
using Shown = std::function<double(const Plan&, const Goal&)>;

/// One a goal. `start` is what the base shows, `nearest` what the nearest plan that was found comes to, where none does all.
std::vector<Reason> reach_of_wants(const Problem& problem, const Distance& distance, const Models& middle, const Shown& shown,
                                   const PerProperty<Band>& start, const Variant* nearest);

}  // namespace standin
