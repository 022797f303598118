// Which foods a text names, whatever tongue it is in.
#pragma once

#include <string_view>
#include <vector>

#include "knowledge/index/knowledge.hpp"

namespace standin {

/// The foods that a text names, as it stands or else in English.
std::vector<const Ingredient*> foods_in_any_tongue(std::string_view text, const Knowledge& knowledge);

}  // namespace standin
