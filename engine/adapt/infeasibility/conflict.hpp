// When nothing meets a request: the smallest set of demands that cannot all be met, and what would have to give.
#pragma once

#include <string>
#include <vector>

#include "adapt/search/rebalance.hpp"

namespace standin {

struct Conflict {
    std::vector<Reason> demands;  ///< a minimal infeasible subset: leave one out and the rest can be met
    std::vector<Reason> would_give;
    std::vector<std::string> wants;  ///< those of the demands that are wants, as written
};

/// A demand as the maker put it: "want" and "firmer", "keep" and "salt".
Reason demand(std::string what, std::string about);

/// Drops demands one by one as long as the rest still cannot be met. Wants count as demands by their words, kept lines, exclusions and
/// the stock on hand each by itself. `request` must be unmeetable as a whole or the answer is empty.
Conflict minimal_infeasible_subset(const Formula& formula, const AdaptRequest& request, const std::vector<Goal>& goals,
                                   const SwapGraph& graph, const Context& context);

}  // namespace standin
