// What is told in passing beside a food, and the words that are never so: they make it another food.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "formula/lexer/line_words.hpp"
#include "knowledge/index/knowledge.hpp"

namespace standin {

/// Whether the word at `i` opens a clause that tells something in passing: "from about 3 oranges", "such as oak", "for depth".
bool opens_aside(const std::vector<Word>& words, std::size_t i, const Knowledge& knowledge);

/// A word that tells of another weight, fat or salt than the bare name does: "salted", "bone", "drained". Never passed over.
bool changes_food(std::string_view folded, const Knowledge& knowledge);

/// "gluten free" among the words [first, last): another food, and another allergen, than the bare name.
bool tells_of_absence(const std::vector<Word>& words, std::size_t first, std::size_t last);

/// Of these the words that tell another food from the first word on: "(smoked, for depth)".
bool names_a_kind(std::string_view folded, const Knowledge& knowledge);

/// The clause that says a food stays outside the mass, as written: "for frying", "for the poaching water". Empty when there is none.
std::string outside_purpose(std::string_view line, const Knowledge& knowledge);

/// Likewise one that says so of any food, whatever it is: "for coating", "to garnish".
std::string coat_purpose(std::string_view line, const Knowledge& knowledge);

}  // namespace standin
