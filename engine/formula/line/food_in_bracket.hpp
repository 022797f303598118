// A food that nobody knows, whose bracket names one that is known: "besobela (Ethiopian basil)".
#pragma once

#include <optional>
#include <string_view>

#include "formula/food/likeness.hpp"
#include "knowledge/index/knowledge.hpp"

namespace standin {

/// The line with the bracket's food in place of both names. Nothing where the name is known, where the bracket names no one food, where
/// either may warn, leave out or be a danger, and where a likeness would be refused too.
std::optional<Likeness> food_in_bracket(std::string_view line, const Knowledge& knowledge);

}  // namespace standin
