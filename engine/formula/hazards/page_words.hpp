// What a pasted page says of the recipe and not of the mass: "Servings: 12", "Prep Time: 45 mins", "Für 4 Personen", "Print Recipe".
#pragma once

#include <string_view>

#include "knowledge/index/knowledge.hpp"

namespace standin {

/// Of a line that is no ingredient line. A line that weighs a food is never one.
bool is_said_of_recipe(std::string_view line, const Knowledge& knowledge);

/// The same of a line that tells several things: "By Ann | Serves 8 | Prep: 40 min".
bool all_said_of_recipe(std::string_view line, const Knowledge& knowledge);

/// "Pour 2 kg de mêlée": what a heading says all of the mass weighs.
bool tells_mass_of_all(std::string_view heading, const Knowledge& knowledge);

/// A sentence that tells who eats it, with nothing weighed in it and no food that it leaves out: "For the antenatal class, 12 guests."
bool is_said_of_guests(std::string_view line, const Knowledge& knowledge);

}  // namespace standin
