// A distance in words.
#pragma once

#include <string>

#include "substitute/context.hpp"

namespace standin {

inline constexpr const char* no_longer_this = "no longer this sausage";

/// "hardly to be told apart", "close", "another sausage, still good", or the last.
std::string verdict_of(double distance, const Context& context);

}  // namespace standin
