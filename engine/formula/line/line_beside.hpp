// Lines of an ingredient list that are no food of the mass: casings, kitchen goods, headings; and curing salts, which are never guessed.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "knowledge/knowledge.hpp"
#include "standin/result.hpp"

namespace standin {

/// What a line such as "2 m hog casings, soaked" names, in words; empty where it may be food.
std::string beside_the_mass(std::string_view line);

/// "For the spice mix:", "Seasoning"; never a line with a digit or a line that is itself a food's name.
bool is_heading(std::string_view line, const Knowledge& knowledge);

/// The refusal of a line that names nitrite, nitrate or a salt made with them. The error has no place yet.
std::optional<Error> curing_salt(std::string_view line);

}  // namespace standin
