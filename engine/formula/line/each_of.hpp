// "1 tsp each cumin and coriander": one amount for each of several foods.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "formula/lexer/trouble.hpp"
#include "knowledge/index/knowledge.hpp"

namespace standin {

/// A line for each food, where the line says that each gets the amount and all of them can be read; else empty.
std::vector<std::string> each_of_several(std::string_view line, const Origin& origin, const Knowledge& knowledge,
                                         bool on_the_shelf = false);

}  // namespace standin
