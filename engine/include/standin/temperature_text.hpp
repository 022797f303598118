// A core temperature in both scales, never below what is asked.
#pragma once

#include <string>

namespace standin {

/// "71.1 C (160 F)".
std::string core_temperature_text(double celsius);

}  // namespace standin
