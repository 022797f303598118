// Which of the foods of its lines a title names.
#pragma once

#include <string>
#include <string_view>

#include "knowledge/index/knowledge.hpp"

namespace standin {

/// The word, folded, by which the title names the food: any of its names ("verde with tomatillos"), one that a word for a sausage is
/// written onto ("Bärlauchbratwurst"), or the last word of one where that alone is what a food or a kind of it is called ("cheese" of blue
/// cheese, never "verde" of a chile verde). Empty where it names none.
std::string named_in_title(std::string_view title, const Ingredient& food, const Knowledge& knowledge);

/// Whether that word is still true of `food`: it is called so, its last word is that, or it is of the kind that is called so.
bool is_called(std::string_view word, const Ingredient& food, const Knowledge& knowledge);

}  // namespace standin
