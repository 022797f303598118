// What brackets name beside a food: its kind, or another food.
#pragma once

#include <string>
#include <string_view>

#include "formula/food/line_notes.hpp"
#include "formula/food/name_text.hpp"
#include "knowledge/index/knowledge.hpp"

namespace standin {

/// "Paprika (hot)", "salt (kosher)": what stands in brackets names the kind.
void take_kind_in_brackets(NameRead& name, LineNotes& notes, const Knowledge& knowledge);

/// "Green chiles (serrano)" as "serrano": the kind that a bracket names of a word that takes it in. `several`: "herbs (parsley, dill)" as
/// "parsley, dill", where no amount stands beside them.
void write_kinds_in_brackets(std::string& line, bool several, const Knowledge& knowledge);

/// "400 g green chile, Anaheim": with the kind in place of the word that takes it in; empty where there is none.
std::string with_kind_behind_comma(std::string_view line, const Knowledge& knowledge);

/// "Green harissa", "harissa (green)": of a sauce or a paste of chiles a colour names another one. Empty where no colour is told.
std::string other_sort_by_colour(const NameRead& name, const LineNotes& notes, const Knowledge& knowledge);

/// What is asked of such a one.
Error unknown_sort(const std::string& sort, const Ingredient& other);

/// "Neutral oil (grapeseed, canola)": of a word for several the bracket gives some, and says no more than "such as" does.
void tell_examples_in_brackets(const NameRead& name, LineNotes& notes, const Knowledge& knowledge);

/// "Tomato sauce (ketchup)": the bracket does not say the same. Within a family it only says it more closely.
std::string other_food_in_brackets(const NameRead& name, const LineNotes& notes, std::string_view written, const Knowledge& knowledge);

}  // namespace standin
