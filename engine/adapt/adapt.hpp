// The best variants of a formula for what is on hand and what is wanted.
#pragma once

#include "substitute/context.hpp"

namespace standin {

/// `formula` must be sound (check_formula). An answer without a variant that meets everything carries the conflict.
Result<AdaptAnswer> adapt_formula(const Formula& formula, const AdaptRequest& request, const Context& context);

}  // namespace standin
