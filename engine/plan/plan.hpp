// From formulas and a list to a plan.
#pragma once

#include <vector>

#include "evaluate/checked_formula.hpp"
#include "standin/plan.hpp"
#include "substitute/context.hpp"

namespace standin {

Result<PlanAnswer> plan_of(const std::vector<CheckedFormula>& formulas, const PlanRequest& request, const Context& context);

}  // namespace standin
