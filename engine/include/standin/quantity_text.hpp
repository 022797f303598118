// Weights and lengths as a US kitchen says them.
#pragma once

#include <string>

namespace standin {

inline constexpr double grams_an_ounce = 28.349523125;  ///< exact: international pound

/// "5 lb 4.7 oz", "3.2 oz", under 2 oz to 0.01 oz.
std::string ounces_text(double grams);

/// "1 1/4 in", to the sixteenth.
std::string inches_text(double mm);

}  // namespace standin
