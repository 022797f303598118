// The words `--without` knows besides names of ingredients: allergens, groups of them, animals, alcohol.
#pragma once

#include <string_view>

#include "knowledge/records.hpp"

namespace standin {

/// Whether `what` is such a word, however it is spelt: "pistachio", "tree nuts", "gluten", "dairy", "pork", "alcohol".
bool is_exclusion_word(std::string_view what);

/// Whether such a word is an allergen or a group of them, and not an animal or alcohol.
bool is_allergen_word(std::string_view what);

/// Whether an ingredient holds what such a word means; false for any other word. When in doubt it does: gelatin is of pork and of beef.
bool carries(const Ingredient& ingredient, std::string_view what);

}  // namespace standin
