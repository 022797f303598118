// What may be meant by the word of a kind alone: "rice" is cooked or raw rice, and no vinegar that is made of it.
#pragma once

#include <string_view>
#include <vector>

#include "knowledge/index/kinds.hpp"

namespace standin {

/// The foods of a kind, in the order of the records. Of a kind that is a plain list of foods those that are called by one of its words,
/// where there are two or more: the others only hold it. Condiments never.
std::vector<const Ingredient*> foods_meant(const Kind& kind, const Knowledge& knowledge);

}  // namespace standin
