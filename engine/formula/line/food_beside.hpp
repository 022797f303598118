// Foods that a line keeps out of the mass: butter for frying, crumbs for coating, seeds to garnish.
#pragma once

#include <optional>
#include <string_view>

#include "formula/amounts/shares.hpp"
#include "knowledge/index/knowledge.hpp"
#include "standin/formula.hpp"

namespace standin {

/// The food of such a line and what it is for; nothing where the line may mean a food of the mass. Fat for the pan is one by "for frying",
/// any food but meat by "for coating", "to garnish"; "plus more for frying" says that the rest goes in.
std::optional<Beside> food_beside(std::string_view text, const Origin& origin, const Knowledge& knowledge);

/// How wide a casing is by its line, in mm: "hog casings 32 mm", "sheep casings, 22/24 mm"; nothing where it does not say.
std::optional<double> casing_width_mm(std::string_view text);

}  // namespace standin
