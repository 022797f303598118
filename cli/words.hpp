// Words and numbers as the pages write them.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "standin/band.hpp"

namespace standin::cli {

/// Columns on a terminal: wide characters count two, combining marks and colour codes none.
int display_width(std::string_view text);

/// Lines of at most `width` columns besides the indent; those after the first are indented `hang` deeper. No newline at the end.
std::string wrap(std::string_view text, int width, int indent = 0, int hang = 0);

/// The same as lines, without indent.
std::vector<std::string> wrapped(std::string_view text, int width);

/// Fixed decimals, never "-0".
std::string number(double value, int decimals);

/// "2400 g", "18.5 g", "0.35 g".
std::string grams(double value);

/// "5.31 (5.12-5.52)"; only the middle where all three read alike.
std::string band(const Band& band, int decimals);

/// "+0.12 (+0.05 to +0.20)".
std::string signed_band(const Band& band, int decimals);

/// "62 %", "under 1 %", "over 99 %".
std::string chance(double share);

/// "a, b and c".
std::string listed(const std::vector<std::string>& words);

/// First letter made a capital.
std::string capital(std::string text);

}  // namespace standin::cli
