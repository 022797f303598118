// A food that comes in and is in the formula already.
#pragma once

#include <cstddef>
#include <map>
#include <optional>
#include <string>

#include "adapt/moves/problem.hpp"

namespace standin {

/// A stand-in that is in the formula already, prepared to the same weight, is that line raised.
std::optional<std::size_t> line_alike(const Problem& problem, const Line& food, const Context& context);

/// What a kept line is made of is not used up elsewhere, unless the list says that there is more: `left`, by ingredient.
bool kept_as_it_is(const Problem& problem, const Line& food, const std::map<std::string, double>& left);

/// Grams of a line that is there for a gram of the same food as it comes in: the line may be weighed toasted, or squeezed.
double weighed_there(const Line& there, const Line& food, const Context& context);

}  // namespace standin
