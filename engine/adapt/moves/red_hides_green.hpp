// Red chile or paprika hides what leaf there is.
#pragma once

#include "adapt/distance/distance.hpp"

namespace standin {

/// Whether a greener mass is wanted and half of this chile or spice less makes it so: less of it, or a green one, comes before more leaf is
/// bought.
bool hides_green(const Formula& formula, std::size_t line, const Distance& distance, const Context& context);

/// Whether a food has leaf pigment of its own.
bool brings_green(const Ingredient& food, const Context& context);

}  // namespace standin
