// Weights of whole masses and batches.
#pragma once

#include <string>

#include "render/units.hpp"

namespace standin::cli {

/// "3.55 kg" from a kilo up, else as `about`; in pounds where the maker weighs so.
std::string kilos(double grams, Units units);

}  // namespace standin::cli
