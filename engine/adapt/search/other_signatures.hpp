// Where in a part of the search plans can be that say something else than a plan that is held.
#pragma once

#include <vector>

#include "adapt/search/signature.hpp"
#include "adapt/search/subproblem.hpp"

namespace standin {

/// `choices`, one a move, as parts that may overlap: every plan of them that is of another idea than `signature` lies in one. To say no
/// more than `signature` a plan must use each of its foods or an equivalent of it, so any other does without one of them and all its
/// equivalents. Empty where the choices made leave no room for another idea.
std::vector<std::vector<Choice>> parts_with_other_signatures(const Problem& problem, const std::vector<Choice>& choices,
                                                             const Signature& signature);

}  // namespace standin
