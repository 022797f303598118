// What lines bring beside what they are there for first: acid, garlic.
#pragma once

#include <cstddef>

#include "adapt/distance/distance.hpp"

namespace standin {

/// Whether a line brings so much of the batch's acid, `batch_acid` in mmol, that it is one: wine, beer, sorrel.
bool brings_acid(const Line& line, double batch_acid, const Context& context);

/// Whether a higher pH is asked for as a number and the batch comes nearer to it by less of line `l`: feta, yoghurt, buttermilk.
bool holds_the_ph_down(const Formula& formula, std::size_t l, const Distance& distance, const Context& context);

/// Whether line `l` is a leaf that brings much of what tastes of garlic or onion: ramps. What stands in for their bulk may need some.
bool is_garlicky_leaf(const Formula& formula, std::size_t l, const Distance& distance, const Context& context);

}  // namespace standin
