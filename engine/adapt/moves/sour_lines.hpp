// Lines that are sour beside what they are there for first.
#pragma once

#include <cstddef>

#include "adapt/distance/distance.hpp"

namespace standin {

/// Whether line `l` brings so much of the batch's acid that it is one: wine, beer, sorrel.
bool brings_acid(const Formula& formula, std::size_t l, const Context& context);

/// Whether a higher pH is asked for as a number and the batch comes nearer to it by less of line `l`: feta, yoghurt, buttermilk.
bool holds_the_ph_down(const Formula& formula, std::size_t l, const Distance& distance, const Context& context);

}  // namespace standin
