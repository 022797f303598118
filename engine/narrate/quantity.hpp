// Quantities in the maker's units.
#pragma once

#include <string>

#include "standin/reason.hpp"

namespace standin {

/// "237", "3.4", "0.52": three figures, no exponent, the same in every country.
std::string three_figures(double value);

/// "90 g", "3.2 oz", "90 g (3.2 oz)".
std::string weight_in(double grams, Units units);

/// "4 C", "39 F", "4 C (39 F)".
std::string temperature_in(double celsius, Units units);

/// "pH 5.03 -> 5.44"; of a quantity that does not move as far as figures show, only what it is.
std::string moves(const Figure& figure, Units units);

/// Whether the figures that would be shown differ.
bool is_nil(const Figure& figure);

}  // namespace standin
