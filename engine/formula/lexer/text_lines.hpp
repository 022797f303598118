// A text as numbered lines, blank ones and # comments left out.
#pragma once

#include <string_view>
#include <vector>

#include "core/json_tree.hpp"

namespace standin {

struct TextLine {
    std::string_view text;  ///< without blanks at its ends
    Place place;            ///< of its first character
};

std::vector<TextLine> text_lines(std::string_view text);

/// The # comments that text_lines leaves out.
std::vector<TextLine> comment_lines(std::string_view text);

/// Splits "key: value"; both empty when there is no colon.
struct KeyValue {
    std::string_view key, value;
};
KeyValue key_value(std::string_view line);

}  // namespace standin
