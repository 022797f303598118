// A mass that lacks salt binds badly whatever else is done. Salt is not moved unasked, so it is said.
#pragma once

#include <optional>

#include "adapt/distance/distance.hpp"

namespace standin {

/// Where a goal is about what holds the mass together or in the pan and the formula has too little salt for it: what salt alone would
/// bring. Nothing where salt is asked about, or where it would change next to nothing.
std::optional<Reason> salt_would_bind(const Formula& base, const Process& made, const Distance& distance, const Context& context);

}  // namespace standin
