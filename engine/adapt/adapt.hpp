// The best variants of a formula for what is on hand and what is wanted.
#pragma once

#include <optional>

#include "evaluate/checked_formula.hpp"
#include "substitute/context.hpp"

namespace standin {

/// `formula` is made to `meat_g` of meat first, where that is given. An answer without a variant that meets everything carries the
/// conflict.
Result<AdaptAnswer> adapt_formula(const CheckedFormula& formula, const AdaptRequest& request, std::optional<double> meat_g,
                                  const Context& context);

}  // namespace standin
