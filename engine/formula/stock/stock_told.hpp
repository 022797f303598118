// What a list says that a food holds or may hold: "sunflower seeds 200 g (may contain nuts)".
#pragma once

#include <string>
#include <vector>

#include "knowledge/index/knowledge.hpp"
#include "standin/formula.hpp"

namespace standin {

/// Blanks it out of the line, whose other words keep their places, and returns the allergens with the maker's words.
std::vector<Declared> take_told(std::string& line, const Knowledge& knowledge);

}  // namespace standin
