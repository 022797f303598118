// "Rice a kilo", "spring onions x6", "mint - a bunch": the amount that stands behind the name.
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>

#include "formula/lexer/quantity_text.hpp"

namespace standin {

struct AmountInLine {
    AmountText amount;
    std::size_t begin = 0, end = 0;
};

/// The amount that begins at `at`, where a word begins: in digits anywhere, in words ("a pinch") behind a comma or where it ends the line;
/// with a unit, or nothing after it. `grams_said`: a bare number is of a unit that stands above the line.
std::optional<AmountInLine> amount_behind_name(std::string_view line, std::size_t at, bool behind_comma, bool grams_said);

}  // namespace standin
