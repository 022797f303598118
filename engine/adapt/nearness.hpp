// A distance as what a maker would call it.
#pragma once

#include "substitute/context.hpp"

namespace standin {

Nearness nearness_of(double distance, const Context& context);

}  // namespace standin
