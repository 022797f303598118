// In what order a practised maker moves things, as limits: of what goes later no larger share goes than of what goes before it.
#pragma once

#include <vector>

#include "adapt/moves/problem.hpp"

namespace standin {

/// The fattest line for who wants it leaner or firmer, the acid of which there is too much, what sets a mass before its salt for who wants
/// it looser, loose water before a binder is bought, the greenest stand-in before more green, and the nearest of the herbs that share a
/// place. `problem` has its moves already.
std::vector<LinearConstraint> what_goes_first(const Problem& problem, const Distance& distance, const Context& context);

}  // namespace standin
