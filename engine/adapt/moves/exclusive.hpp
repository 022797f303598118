// Moves that exclude each other: of each group a plan uses one at most (a special ordered set of type 1). A cook takes one flour, not a
// spoon of three; a food comes in on one line, not for another line and beside it; a line goes down or up, not both.
#pragma once

#include <vector>

#include "adapt/moves/problem.hpp"

namespace standin {

/// Groups of two moves or more, by their numbers: Problem::exclusive. A herb stands in for one missing herb only where another is there for
/// the other: of mint and cilantro not all becomes parsley while there is dill. The relaxation holds the shares of a group to one together,
/// which is true of every plan: it uses one of them, and no more of it than its most.
std::vector<std::vector<std::size_t>> exclusive_groups(const Problem& problem, const Knowledge& knowledge);

/// Whether no two of these moves exclude each other (by Problem::exclusive), as in every plan.
bool keeps_exclusions(const Problem& problem, const std::vector<std::size_t>& used);

}  // namespace standin
