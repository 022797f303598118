// A formula in plain lines: a title, an ingredient a line, then the process as "key: value".
#pragma once

#include <string_view>

#include "knowledge/knowledge.hpp"
#include "standin/formula.hpp"
#include "standin/result.hpp"

namespace standin {

Result<Formula> read_plain_formula(std::string_view text, std::string_view file, const Knowledge& knowledge);

}  // namespace standin
