// The most certainty with which all that was asked is to be had.
#pragma once

#include <functional>
#include <optional>

#include "standin/advice.hpp"

namespace standin {

/// What has all that was asked in so large a share of the draws; without variants where nothing was found.
using Surely = std::function<AdaptAnswer(double sure)>;

/// What `surely` finds at the greatest share below `sure`, in steps that do not hang on it; nothing where an even chance is asked for, or
/// there is none.
std::optional<AdaptAnswer> surest(double sure, const Surely& surely);

}  // namespace standin
