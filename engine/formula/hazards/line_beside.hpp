// Lines of an ingredient list that are no food of the mass: casings, kitchen goods, headings.
#pragma once

#include <optional>
#include <set>
#include <string>
#include <string_view>

#include "knowledge/index/knowledge.hpp"
#include "standin/formula.hpp"

namespace standin {

/// What a line such as "2 m hog casings, soaked" names; nothing where it may be a food of the mass. Caul is eaten with the sausage.
std::optional<Beside> beside_the_mass(std::string_view line, const Knowledge& knowledge);

/// "For the spice mix:", "Seasoning"; never a line with a digit or a line that is itself a food's name.
bool is_heading(std::string_view line, const Knowledge& knowledge);

using FoodIds = std::set<std::string>;

/// "Grind through the coarse plate", "alles gut vermengen": tells what to do, and names no amount and no food but, in a sentence, `own`
/// ones: those of the formula.
bool is_method_line(std::string_view line, const Knowledge& knowledge, const FoodIds& own = {});

}  // namespace standin
