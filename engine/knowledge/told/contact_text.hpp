// Of an allergen that words name beside a food: whether it is in the food, or only shares a place, a tool or a line with it.
#pragma once

#include <string_view>

#include "knowledge/index/knowledge.hpp"

namespace standin {

/// Read piece by piece, for "has mustard in it and is packed next to egg" says both: a piece without a word for either goes with the one
/// before it. An allergen that one piece says is in the food is in it, whatever another says.
bool is_only_of_contact(std::string_view words, std::string_view allergen, const Knowledge& knowledge);

}  // namespace standin
