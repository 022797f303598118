// The clauses of a line that may be taken out of it for a reading: what stands behind a comma or in brackets.
#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "knowledge/knowledge.hpp"

namespace standin {

/// The line without those of its clauses behind the first that `may_go`, which are added to `out`.
std::string without_clauses(std::string_view line, std::vector<std::string>& out, const std::function<bool(std::string_view)>& may_go);

/// Whether no word of it is an amount, a form, a kind, or something done to a food: without it the line is read as with it.
bool changes_no_reading(std::string_view said, const Knowledge& knowledge);

}  // namespace standin
