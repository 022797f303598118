// Mending a mass that is mixed: what was tasted and measured, to ways of putting it right.
#pragma once

#include "evaluate/checked_formula.hpp"
#include "knowledge/readers/mending.hpp"
#include "standin/mend.hpp"
#include "substitute/context.hpp"

namespace standin {

Result<MendAnswer> mend_formula(const CheckedFormula& formula, const MendRequest& request, const Mending& mending, const Context& context);

}  // namespace standin
