// "Defrosted yesterday": when it thawed says nothing of the food beside that it was frozen.
#pragma once

#include <string>

#include "knowledge/index/knowledge.hpp"

namespace standin {

/// Blanks what is said beside a word for thawed of the day, or of the fridge it lay in. The line keeps its length.
void take_thaw_day(std::string& line, const Knowledge& knowledge);

}  // namespace standin
