// In what order a maker would try stand-ins for a line.
#pragma once

#include "substitute/stand_ins.hpp"

namespace standin {

/// The least comes first. By closeness and by what is felt together: what is felt twice as much is not twice as far from being tried. The
/// trade's own swaps come forward, solid fat stands before what is melted or poured, and what any shop sells before what must be gathered
/// or ordered, unless the line itself had to be.
double standing_of(const Candidate& candidate, const Line& line, double felt, double new_allergens, const Knowledge& knowledge);

}  // namespace standin
