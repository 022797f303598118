// Sensitivity of one property: which lines move it, and which unknown makes its band wide.
#pragma once

#include "evaluate/checked_formula.hpp"
#include "evaluate/evaluator.hpp"
#include "standin/why.hpp"

namespace standin {

/// Without its prediction.
WhyAnswer why_of(const CheckedFormula& formula, Property property, const Evaluator& evaluator);
WhyAnswer why_of(const CheckedFormula& formula, ColourPart part, const Evaluator& evaluator);

}  // namespace standin
