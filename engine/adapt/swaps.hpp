// What can stand in for one line of a formula, at what dose, and what it changes.
#pragma once

#include <string_view>

#include "evaluate/checked_formula.hpp"
#include "substitute/context.hpp"

namespace standin {

/// `line` is a name or a number from 1. The stand-ins a maker would try first, of what may be used: by closeness and by what is felt
/// together.
Result<SwapsAnswer> swaps_for_line(const CheckedFormula& formula, std::string_view line, const SwapsRequest& request,
                                   const Context& context);

}  // namespace standin
