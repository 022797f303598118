// A list of what is on hand with columns: what it is, how much there is, where it stands.
#pragma once

#include <deque>
#include <string>
#include <string_view>
#include <vector>

#include "formula/lexer/text_lines.hpp"
#include "knowledge/index/knowledge.hpp"

namespace standin {

/// Whether the line heads such columns by words of what is there: "Item  Have  Where".
bool heads_stock_table(std::string_view line, const Knowledge& knowledge);

/// The rows below such a head as lines of a list: "1.2 kg spinach", "no sorrel". Their texts stand in `rewritten`. Where a food stands is
/// left out, but for what warns of it.
std::vector<TextLine> without_stock_table(const std::vector<TextLine>& lines, std::deque<std::string>& rewritten,
                                          const Knowledge& knowledge);

}  // namespace standin
