// A core temperature in both scales, never below what is asked.
#pragma once

#include <string>

namespace standin {

/// "71.1 C (160 F)".
std::string core_temperature_text(double celsius);

/// With the time it must be kept, where there is one: "68.3 C (155 F), kept for 17 seconds".
std::string core_temperature_text(double celsius, double hold_s);

}  // namespace standin
