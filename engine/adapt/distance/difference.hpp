// Bands of the difference between two formulas. Both share every draw, so these are narrow where each absolute band is wide.
#pragma once

#include <vector>

#include "evaluate/models.hpp"
#include "standin/band.hpp"

namespace standin {

struct Differences {
    PerProperty<Band> properties;  ///< variant less base
    Band rested, cooked;           ///< CIEDE2000
};

/// States of the two at the same draws, as many of the one as of the other.
Differences differences_between(const std::vector<State>& base, const std::vector<State>& variant);

}  // namespace standin
