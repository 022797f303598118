// The best k plans, found by branch and bound over which moves are used.
//
// A plan is a set of moves that may be used, each at its full price, and a way of making the batch. Its value is
//   cost = squares of what is felt and lost, at the grams that suit it best, + sum of the prices of its moves,
// and its distance is the root of that.
// optimize/branch_and_bound.hpp says how and why the bound holds. Here the relaxation is the descent, which finds a local least: the models
// are smooth and nearly linear over these ranges, and tests hold it against exhaustive search.
//
// Plans must be different ideas (signature.hpp). A node all of whose plans say no more than a plan that is held is left out. One whose
// relaxed batch says no more than a held plan P, no nearer than it, gives way to the parts of it that can say something else: to say no
// more than P a plan must use each food of P or an equivalent of it, so every other plan does without one of them and all its equivalents,
// and lies in the part that shuts those. What is proved is then that no other idea comes nearer than the last plan, and that no plan of a
// held idea comes nearer by more than `worth_adding`.
#pragma once

#include <cmath>
#include <functional>
#include <optional>
#include <vector>

#include "adapt/search/rebalance.hpp"

namespace standin {

struct Plan {
    std::size_t process = 0;    ///< index in Problem::processes
    std::vector<double> grams;  ///< one a move
    double cost = 0;            ///< squared noticeable differences
    double price = 0;           ///< of these the prices of what is used, the making included

    double distance() const { return std::sqrt(cost); }
};

struct SearchLimits {
    std::size_t plans = 3;     ///< how many to find
    std::size_t changes = 0;   ///< most moves that are no trims in a plan; 0: any number
    std::size_t nodes = 1500;  ///< give up proving beyond
    std::function<bool(std::size_t visited, double best)> progress;
    /// Tighter goals for a plan that misses some once it is weighed out and shown as medians; nothing when it keeps them all. The plan is
    /// then balanced anew under those, so that what is compared is what will be shown. The bounds stay those of the middle.
    std::function<std::optional<std::vector<Goal>>(const Plan& plan, const std::vector<Goal>& hard)> tighter;
};

struct SearchResult {
    std::vector<Plan> plans;     ///< best first, each an idea of its own
    bool proved = false;         ///< nothing unvisited is nearer than the last of them
    double gap = 0;              ///< noticeable differences
    std::size_t visited = 0;     ///< nodes solved
    bool stopped = false;        ///< by `progress`
    double least_violation = 0;  ///< of the relaxed problem: above 0 nothing meets the hard limits
};

SearchResult search_plans(const Problem& problem, const Distance& distance, const Models& middle, const SearchLimits& limits);

/// The moves a plan really uses.
std::vector<std::size_t> used_moves(const Problem& problem, const std::vector<double>& grams);

}  // namespace standin
