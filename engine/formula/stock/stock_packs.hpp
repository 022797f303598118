// Packs of a list and what one of them weighs: "spinach 200 g bag x2", "2 bags of 200 g", "1 bag, 200 g".
#pragma once

#include <string>
#include <string_view>

#include "formula/lexer/trouble.hpp"
#include "knowledge/index/knowledge.hpp"

namespace standin {

/// The line with what its packs weigh at its head, "2 x 200 g spinach"; as it is where it tells of none, or leaves their number open.
std::string with_packs_first(std::string_view line, const Knowledge& knowledge);

/// Whether it leaves open if the weight is that of one pack or of all: "spinach, 2 bags, 200 g".
bool leaves_packs_open(std::string_view line, const Knowledge& knowledge);
Error asks_of_packs(const std::string& where);

}  // namespace standin
