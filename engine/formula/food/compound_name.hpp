// Names that a joining word makes of two: "noix de Saint-Jacques" is no walnut, "beurre de cacao" no butter.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "formula/amounts/shares.hpp"
#include "formula/lexer/line_words.hpp"

namespace standin {

/// The whole name, as written, where the words that were passed over stand behind a joining word ("de", "di", "of") and the food that
/// was read stands before it: that is another food. Empty where nothing of the kind was passed over, or the word names a place.
std::string other_food_by_joining(std::string_view line, const ReadLine& read, const Knowledge& knowledge);

/// The whole name, where a line that was not understood names two foods, or a food and a word nobody knows, with a joining word between.
std::string joined_name(std::string_view line, const Knowledge& knowledge);

/// Whether a joining word stands beside the word at `i`: "beurre de cacahuète".
bool is_joined_to_another(const std::vector<Word>& words, std::size_t i, const Knowledge& knowledge);

/// What is asked of a line that names two foods; `joined` by such a word they may be the name of one.
Error two_foods(const Ingredient& own, const std::string& other, std::string where, bool joined);

/// What is asked of such a name.
Error unknown_compound(const std::string& name, std::string where, const Knowledge& knowledge);

}  // namespace standin
