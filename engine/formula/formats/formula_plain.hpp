// A formula in plain lines: a title, an ingredient a line, then the process as "key: value".
#pragma once

#include <string_view>

#include "formula/formats/draft.hpp"

namespace standin {

/// Whether a first line of these words is the title: unless it plainly is a line of the formula.
bool is_title(std::string_view line, const Knowledge& knowledge);

Draft read_plain_formula(std::string_view text, std::string_view file, const Knowledge& knowledge);

}  // namespace standin
