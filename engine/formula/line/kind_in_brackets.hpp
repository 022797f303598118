// What brackets name beside a food: its kind, or another food.
#pragma once

#include <string>

#include "formula/line/line_notes.hpp"
#include "formula/line/name_text.hpp"
#include "knowledge/knowledge.hpp"

namespace standin {

/// "Paprika (hot)", "salt (kosher)": what stands in brackets names the kind.
void take_kind_in_brackets(NameRead& name, LineNotes& notes, const Knowledge& knowledge);

/// "Tomato sauce (ketchup)": the bracket does not say the same. Within a family it only says it more closely.
std::string other_food_in_brackets(const NameRead& name, const LineNotes& notes, std::string_view written, const Knowledge& knowledge);

}  // namespace standin
