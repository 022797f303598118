// The clauses of a line: what stands between commas, brackets and the like. Formula lines and lists are cut alike.
#pragma once

#include <cstddef>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "knowledge/index/knowledge.hpp"

namespace standin {

struct LineClause {
    std::size_t first = 0, last = 0;  ///< bytes, without the signs around it
    char opened = ' ', closed = ' ';  ///< the signs around it; blank at the ends of the line

    bool in_bracket() const { return opened == '(' || opened == '['; }
    std::string_view of(std::string_view line) const { return line.substr(first, last - first); }
};

/// Not at the comma of "1,5 kg", nor at a dash or a stop within a word.
std::vector<LineClause> cut_in_clauses(std::string_view line);

/// Blanks a clause with the signs that part it from what stands before it. The line keeps its length.
void blank_clause(std::string& line, const LineClause& clause);

/// The line with those of its clauses behind the first blanked that `may_go`; they are added to `out`.
std::string without_clauses(std::string_view line, std::vector<std::string>& out, const std::function<bool(std::string_view)>& may_go);

/// Whether no word of it is an amount, a form, a kind, or something done to a food: without it the line is read as with it.
bool changes_no_reading(std::string_view said, const Knowledge& knowledge);

}  // namespace standin
