// What follows a swap without being asked: plain salt by all that came or went of it, and acid of the other
// lines so that the batch stays nearest to the base.
#pragma once

#include "adapt/distance/distance.hpp"
#include "standin/advice.hpp"

namespace standin {

struct Trimmed {
    Formula formula;  ///< the one given, with the trims at kitchen weights
    std::vector<Trim> trims;
    double distance = 0;  ///< from the distance's base, the price of the trims included
};

/// `swapped` is the base with one line, number `line`, replaced by what counts as `counted` a gram (stand_ins.hpp); that line and kept
/// ones stay as they are.
Trimmed trimmed_after(const Formula& swapped, std::size_t line, const Material& counted, const Distance& distance, const Context& context);

}  // namespace standin
