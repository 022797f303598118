// The best grams for a given set of moves: a descent of our own that uses what the problem is (squares of nearly linear rows plus prices),
// from one start while the search is on, from several for what will be shown. What comes back is recomputed from the models and says
// itself whether it keeps the constraints; no solver is believed.
#pragma once

#include <array>
#include <limits>
#include <vector>

#include "adapt/search/subproblem.hpp"

namespace standin {

/// What is known of the two basins of a batch, without binder and with it: the cost in each is no less than this, and where it was found,
/// one a move (empty: nowhere yet).
struct Basins {
    std::array<double, 2> least{};
    std::array<std::vector<double>, 2> grams{};
};

struct Solution {
    std::vector<double> grams;  ///< one a move
    double cost = 0;            ///< squared noticeable differences: what is felt, lost and missed of wants, and prices
    double price = 0;           ///< of these the prices
    double violation = 0;       ///< largest breach of a hard limit, in noticeable differences or shares; 0 when none
    Basins basins{};            ///< the least costs hold with more moves out or in and tighter goals as well
    bool feasible() const { return violation < 1e-4; }
    const std::vector<double>& values() const { return grams; }
};

/// Whether `a` is to be preferred: what keeps the limits, then the nearer; where neither does, what breaks them less.
bool better(const Solution& a, const Solution& b);

struct SolveOptions {
    double cutoff = std::numeric_limits<double>::infinity();  ///< a cost plainly above it need not be told exactly
    bool multistart = false;                                  ///< look for a batch that keeps the limits from many starts before giving up
    const std::vector<Goal>* hard = nullptr;                  ///< goals to keep instead of the problem's own
    Basins basins{};                                          ///< of a solution with fewer choices made: where nothing better can be
};

class Rebalancer {
public:
    Rebalancer(const Problem& problem, const Distance& distance, const Models& middle)
        : problem_(problem), distance_(distance), models_(middle) {}

    /// Minimises over the grams of all moves that are not out, starting from `from` (one a move; empty: nothing moved). When the answer
    /// breaks a limit, other starts are tried before it is given as it is.
    Solution solve(const std::vector<Choice>& choices, const ProcessOption& process, const std::vector<double>& from,
                   const SolveOptions& options = {}) const;

    /// `found` once more from other starts and to the last digit, for what will be shown: the best of them.
    Solution polished(const std::vector<Choice>& choices, const ProcessOption& process, const Solution& found,
                      const SolveOptions& options = {}) const;

    /// The batch after `grams` of every move, and what the models say of it.
    Material total(const std::vector<double>& grams) const;
    State state(const Material& total, const ProcessOption& process) const { return models_.state(total, process.state); }

private:
    Subproblem subproblem(const std::vector<Choice>& choices, const ProcessOption& process, const SolveOptions& options) const {
        return {problem_, options.hard ? *options.hard : problem_.hard, distance_, models_, process, choices};
    }

    const Problem& problem_;
    const Distance& distance_;
    const Models& models_;
};

}  // namespace standin
