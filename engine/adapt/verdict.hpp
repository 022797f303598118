// A distance in words.
#pragma once

#include <string>

#include "substitute/context.hpp"

namespace standin {

/// "hardly to be told apart", "close", "another sausage, still good", "no longer this sausage".
std::string verdict_of(double distance, const Context& context);

}  // namespace standin
