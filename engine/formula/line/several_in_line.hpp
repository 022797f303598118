// Several foods in one line, each with its own amount.
//   For 3 kg of pork shoulder take 54 g salt, 9 g black pepper and a bunch of parsley.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "formula/lexer/trouble.hpp"
#include "knowledge/index/knowledge.hpp"

namespace standin {

/// A line for each of them, perhaps with a heading that says what the amounts go with ("per kg of meat:") before them; empty where it is
/// no such line. Each can be read by itself, but for a first one that no more than names the meat.
std::vector<std::string> several_in_line(std::string_view line, const Origin& origin, const Knowledge& knowledge);

}  // namespace standin
