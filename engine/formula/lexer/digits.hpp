// Whether figures stand in a text.
#pragma once

#include <string_view>

namespace standin {

inline bool has_digit(std::string_view text) { return text.find_first_of("0123456789") != std::string_view::npos; }

/// True of an empty one as well.
inline bool only_digits(std::string_view text) { return text.find_first_not_of("0123456789") == std::string_view::npos; }

}  // namespace standin
