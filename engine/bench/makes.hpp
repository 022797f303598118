// How many links or patties a batch gives, and what is left of it after cooking.
#pragma once

#include "knowledge/knowledge.hpp"
#include "standin/sheet.hpp"

namespace standin {

/// Links where the process names a casing's diameter, else patties. A link is a cylinder: mass = density * pi/4 * diameter^2 * length.
/// `piece_g` 0: a usual one. Cooked weight = raw * (1 - cook loss).
SheetYield makes_of(const Formula& formula, const Prediction& prediction, double piece_g, const Knowledge& knowledge);

}  // namespace standin
