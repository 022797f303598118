// What a butcher knows of wants for less or more fat: which cut may come in for which, and which goes out first.
#pragma once

#include <cstddef>

#include "adapt/distance/distance.hpp"

namespace standin {

/// Whether `food` in place of line `l` moves the fat the way that is wanted: who wants it leaner is not offered one fat cut for another.
bool serves_fat_want(const Formula& formula, std::size_t l, const Ingredient& food, const Distance& distance, const Context& context);

/// Whether less fat is wanted and there is a clearly fatter cut to take out before another comes in for line `l`.
bool has_fatter_line(const Formula& formula, std::size_t l, const Distance& distance, const Context& context);

/// Game and rabbit alone, whose own fat nobody sells: makers take that of another animal, back fat before all.
bool has_no_fat_of_its_own(const Formula& formula, const Knowledge& knowledge);

}  // namespace standin
