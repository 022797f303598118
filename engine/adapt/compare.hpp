// Formulas side by side, with the bands of what lies between them.
#pragma once

#include "evaluate/checked_formula.hpp"
#include "substitute/context.hpp"

namespace standin {

CompareAnswer compare_formulas(const std::vector<CheckedFormula>& formulas, const Context& context);

}  // namespace standin
