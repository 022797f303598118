// The nearest known word to a mistyped one.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace standin::cli {

/// Nothing when none is near.
std::optional<std::string> nearest(std::string_view word, const std::vector<std::string>& known);

}  // namespace standin::cli
