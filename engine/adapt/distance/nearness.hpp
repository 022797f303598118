// A distance as what a maker would call it.
#pragma once

#include "adapt/distance/distance.hpp"
#include "substitute/context.hpp"

namespace standin {

Nearness nearness_of(double distance, const Context& context);

/// How far a variant at `distance` is for whoever names it: what a want misses is told as that and makes no other sausage of it.
double as_named(double distance, const Distance& measure, const State& state);

}  // namespace standin
