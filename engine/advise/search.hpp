// The best k plans, found by branch and bound over which moves are used.
//
// A plan is a set of moves that may be used, each at its full price, and a way of making the batch. Its value is
//   deviation(grams that suit it best) + sum of the prices of its moves.
// A node fixes some moves as in or out and leaves the rest open. Its bound prices every open move in proportion to its grams: price *
// grams / most. As grams never exceed most, no plan of the node can have less deviation than the relaxed batch and none can pay less
// than the relaxed prices, so the bound holds for all of them, as far as the inner minimum is the least one (SLSQP finds a local one; the
// models are smooth and nearly linear over these ranges, and tests hold it against exhaustive search). Nodes are taken in the order of
// their bounds; when the least bound left is no better than the k-th plan, nothing unvisited can be.
#pragma once

#include <functional>
#include <vector>

#include "advise/rebalance.hpp"

namespace standin {

struct Plan {
    std::size_t process = 0;    ///< index in Problem::processes
    std::vector<double> grams;  ///< one a move
    double distance = 0;        ///< deviation plus prices of what is used
    double deviation = 0;
};

struct SearchLimits {
    std::size_t plans = 3;     ///< how many to find
    std::size_t changes = 0;   ///< most moves that are no trims in a plan; 0: any number
    std::size_t nodes = 1500;  ///< give up proving beyond
    std::function<bool(std::size_t visited, double best)> progress;
};

struct SearchResult {
    std::vector<Plan> plans;  ///< best first, none of them a dusting of a better one
    bool proved = false;
    double gap = 0;              ///< noticeable differences
    std::size_t visited = 0;     ///< nodes solved
    double least_violation = 0;  ///< of the relaxed problem: above 0 nothing meets the hard limits
};

SearchResult search_plans(const Problem& problem, const Yardstick& yardstick, const Models& middle, const SearchLimits& limits);

/// The moves a plan really uses.
std::vector<std::size_t> used_moves(const Problem& problem, const std::vector<double>& grams);

}  // namespace standin
