// Foods so near one another in their part that a maker takes either: moves that bring them are one idea, not two.
#pragma once

#include "adapt/moves/problem.hpp"

namespace standin {

/// Fills in what each move is like: the role of its line, and the moves that are equivalent to it: they bring
/// the same food prepared in another way, or foods for the same line, or in addition in the same role, that a direct swap calls close, or
/// dry binders that are added; and they differ in no allergen that the formula does not have already.
void find_equivalents(Problem& problem, const Knowledge& knowledge);

}  // namespace standin
