#include "standin/temperature_text.hpp"

#include <cmath>

#include "standin/number_text.hpp"

namespace standin {

std::string core_temperature_text(double celsius) {
    // A rule in whole degrees Fahrenheit stands in the knowledge to 0.1 C, so its own number lies within 0.05 * 1.8 F: that much is given
    // back before rounding up.
    constexpr double given_back = 0.09;
    return trimmed_text(rounded_up(celsius, 1), 1) + " C (" + fixed_text(rounded_up(celsius * 1.8 + 32 - given_back, 0), 0) + " F)";
}

std::string core_temperature_text(double celsius, double hold_s) {
    constexpr double minute = 60;
    if (hold_s <= 0) return core_temperature_text(celsius);
    const bool minutes = hold_s >= 2 * minute;
    return core_temperature_text(celsius) + ", kept for " + trimmed_text(std::ceil(minutes ? hold_s / minute : hold_s), 0) +
           (minutes ? " minutes" : " seconds");
}

}  // namespace standin
