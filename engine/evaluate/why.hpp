// Sensitivity of one property: which lines move it, and which unknown makes its band wide.
#pragma once

#include <functional>

#include "evaluate/batch.hpp"
#include "standin/why.hpp"

namespace standin {

/// The band of `property` with the named uncertainties held at their middle.
using BandWithout = std::function<Band(const std::string& held)>;

/// Without its prediction. `without` is asked for the few unknowns that matter.
WhyAnswer why_of(const Formula& formula, Property property, Pantry& pantry, const BandWithout& without);

}  // namespace standin
