// How many links or patties a batch gives, and what is left of it after cooking.
#pragma once

#include <optional>

#include "knowledge/index/knowledge.hpp"
#include "standin/sheet.hpp"

namespace standin {

/// One piece as the maker wants it; both absent: a usual one.
struct PieceAsked {
    std::optional<double> grams, link_mm;
};

/// Links where the process names a casing's diameter, else patties. A link is a cylinder: mass = density * pi/4 * diameter^2 * length.
/// Cooked weight = raw * (1 - cook loss).
SheetYield makes_of(const Formula& formula, const Prediction& prediction, const PieceAsked& asked, const Knowledge& knowledge);

}  // namespace standin
