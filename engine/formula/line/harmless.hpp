// A word that nobody knows and that may be passed over, because it stands where it can only describe the food.
#pragma once

#include <vector>

#include "formula/lexer/line_words.hpp"
#include "formula/line/prepared_text.hpp"

namespace standin {

/// Word `i` beside `ingredient`, among words [first, last) before its name (first is 0) or behind it. Behind it only as a clause of its
/// own: "palm sugar, shaved". Before it only where the name is whole and its last word names no sort: "native garlic", but not "X butter".
bool is_harmless(const std::vector<Word>& words, std::size_t i, std::size_t first, std::size_t last, const LineContext& context,
                 const Ingredient& ingredient);

}  // namespace standin
