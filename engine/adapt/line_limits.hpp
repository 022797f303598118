// How far a line may go down by itself.
#pragma once

#include "adapt/distance.hpp"

namespace standin {

/// Grams of a line that are not worth leaving: less than one pod, or a twelfth of it.
double remnant_of(const Line& line, const Knowledge& knowledge);

/// Share of the water that may go. Who asks for a juicier one is not told to take the water out of a mass that is not wet: something
/// holds it.
double most_water_out(const Line& line, const Distance& distance, double batch_grams);

}  // namespace standin
