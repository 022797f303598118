// One line of a kitchen file.
#pragma once

#include <string_view>
#include <vector>

#include "formula/lexer/text_lines.hpp"
#include "knowledge/index/knowledge.hpp"
#include "standin/kitchen.hpp"
#include "standin/result.hpp"

namespace standin {

struct KitchenLine {
    std::vector<KitchenFact> facts;
    std::vector<Reason> notes;
};

/// The facts that a line tells: one, or several of the same food. `file` names it in the place of an error.
Result<KitchenLine> read_kitchen_line(const TextLine& line, std::string_view file, const Knowledge& knowledge);

}  // namespace standin
