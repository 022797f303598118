#include "render/kilos.hpp"

#include <cmath>

namespace standin::cli {

std::string kilos(double grams, Units units) {
    constexpr double kilo = 1000;
    if (units != Units::metric || grams < kilo) return about(grams, units);
    return trimmed_number(std::round(grams / 10) / 100, 2) + " kg";
}

}  // namespace standin::cli
