// The foods that would do as well in a plan: those equivalent to what it brings, in their place.
#pragma once

#include "adapt/search/rebalance.hpp"
#include "adapt/search/search.hpp"

namespace standin {

struct Alternative {
    std::size_t move = 0, instead = 0;  ///< of the problem: what the plan brings, and what could come in its place
    double grams = 0;                   ///< of the latter, everything else balanced anew
    double distance = 0;                ///< of the plan with it
};

/// Nearest first; a few for each food, none much further than the plan itself.
std::vector<Alternative> alternatives_to(const Plan& plan, const Problem& problem, const Rebalancer& rebalancer);

}  // namespace standin
