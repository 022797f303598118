// The swaps as a graph in Graphviz's DOT language.
#pragma once

#include <optional>
#include <string>

#include "knowledge/records/records.hpp"

namespace standin {

/// All swaps, or those from and to `centre` where it is not null; of one role where given. An arrow leads from an ingredient to its
/// stand-in. Empty when no swap is left. The same records give the same text.
std::string swap_dot(const Records& records, const Ingredient* centre, std::optional<Role> role);

}  // namespace standin
