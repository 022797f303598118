// "Greek-style yogurt" is yogurt as it is made there; "chicken-style pieces" are another food.
#pragma once

#include <string>

#include "knowledge/index/knowledge.hpp"

namespace standin {

/// Takes the word for "style" off a word that names no food and changes none.
void take_style(std::string& line, const Knowledge& knowledge);

}  // namespace standin
