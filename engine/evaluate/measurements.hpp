// What a maker could measure of a batch, how much narrower one property's band would be for it, and the line of a kitchen file that
// tells it: each reading is tried at the general middle with the spread that such readings have.
#pragma once

#include <vector>

#include "evaluate/evaluator.hpp"
#include "standin/why.hpp"

namespace standin {

/// The best first; those that take less than a twentieth off the band are left out.
std::vector<Measurement> measurements_for(const Formula& formula, Property property, const Sampled& sampled, const Band& band);

}  // namespace standin
