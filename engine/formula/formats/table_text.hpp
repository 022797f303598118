// Tables as plain lines: of every row the name and one amount.
//   | Pork shoulder | 3500 | 70.0 |  under  | Ingredient | g | % |   ->   3500 g Pork shoulder
#pragma once

#include <deque>
#include <string>
#include <utility>
#include <vector>

#include "formula/lexer/quantity_text.hpp"
#include "formula/lexer/text_lines.hpp"
#include "knowledge/index/knowledge.hpp"
#include "standin/reason.hpp"

namespace standin {

struct PlainTables {
    std::vector<TextLine> lines;
    std::deque<std::string> rewritten;  ///< what some of the lines are views of
    std::vector<TextLine> passed;       ///< headings and rows, of which something is in no line
    std::vector<Reason> told{};
    Whole shares_of = Whole::unsaid;  ///< what a heading says that percentages are of
};

/// Leaves lines as they are where they are no table, or read as well without.
PlainTables without_tables(const std::vector<TextLine>& lines, const Knowledge& knowledge);

}  // namespace standin
