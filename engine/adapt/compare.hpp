// Formulas side by side, with the bands of what lies between them.
#pragma once

#include "substitute/context.hpp"

namespace standin {

/// The formulas must be sound.
CompareAnswer compare_formulas(const std::vector<Formula>& formulas, const Context& context);

}  // namespace standin
