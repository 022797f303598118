// The maker's own records laid over the knowledge: composition, acidity, heat, measures and trim of single foods, the step of the scale.
// Nothing of it touches names, allergens, cautions, rules or limits: a kitchen may know a lot better, never make it safer.
#pragma once

#include <string>
#include <string_view>

#include "knowledge/index/knowledge.hpp"
#include "standin/kitchen.hpp"

namespace standin {

/// `base` with the facts of `kitchen` in place of the general figures, each with a source of its own.
Knowledge with_kitchen(const Knowledge& base, const Kitchen& kitchen);

/// The id of a food that is known by its likeness alone.
std::string own_food_id(std::string_view called);

/// Whether a source reference is a line of the maker's kitchen file.
bool is_kitchen_source(std::string_view reference);

}  // namespace standin
