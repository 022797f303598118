// A formula as it will be cooked: where the maker writes less than the meat needs, every page tells him to cook it further, and what it
// loses and looks like is told for that.
#pragma once

#include <string_view>

#include "evaluate/checked_formula.hpp"

namespace standin {

/// `formula` checked, with the core that its meat needs under the rule set `rules`. Who has measured the whole course of the core knows.
Result<CheckedFormula> cooked_through(const Formula& formula, const Knowledge& knowledge, std::string_view rules);

}  // namespace standin
