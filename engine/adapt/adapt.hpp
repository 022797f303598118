// The best variants of a formula for what is on hand and what is wanted.
#pragma once

#include "evaluate/checked_formula.hpp"
#include "substitute/context.hpp"

namespace standin {

/// An answer without a variant that meets everything carries the conflict.
Result<AdaptAnswer> adapt_formula(const CheckedFormula& formula, const AdaptRequest& request, const Context& context);

}  // namespace standin
