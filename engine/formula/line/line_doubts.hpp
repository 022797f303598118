// What makes the reading of a line less than sure, in words.
#pragma once

#include <string>
#include <vector>

#include "formula/amounts/amount.hpp"
#include "formula/amounts/shares.hpp"
#include "formula/food/line_notes.hpp"
#include "formula/food/name_text.hpp"

namespace standin {

/// "pork" read as pork shoulder; ...
Reason generic_note(const NameRead& name);

/// `weighed`: what the amount came to, before a weight in brackets settled it.
std::vector<LineDoubt> doubts_about_line(const NameRead& name, const AmountText& amount, const Weighed& weighed, const LineNotes& notes);

}  // namespace standin
