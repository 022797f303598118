// Lines of an ingredient list that are no food of the mass: casings, kitchen goods, headings.
#pragma once

#include <string>
#include <string_view>

#include "knowledge/knowledge.hpp"

namespace standin {

/// What a line such as "2 m hog casings, soaked" names, in words; empty where it may be food.
std::string beside_the_mass(std::string_view line, const Knowledge& knowledge);

/// The caul of such a line, which is eaten with the sausage; null where there is none.
const Ingredient* wrapping_food(std::string_view line, const Knowledge& knowledge);

/// "For the spice mix:", "Seasoning"; never a line with a digit or a line that is itself a food's name.
bool is_heading(std::string_view line, const Knowledge& knowledge);

/// "Grind through the coarse plate", "alles gut vermengen": tells what to do, and names no food and no amount of one.
bool is_method_line(std::string_view line, const Knowledge& knowledge);

}  // namespace standin
