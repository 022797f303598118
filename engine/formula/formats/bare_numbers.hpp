// Numbers without a unit that cannot count pieces: "leek 200" beside a kilo of meat.
#pragma once

#include "formula/formats/draft.hpp"

namespace standin {

/// Reads them as grams and asks once for the sheet whether that is meant. Nothing where a title or a heading tells the unit.
void ask_of_bare_numbers(Draft& draft, const Knowledge& knowledge);

}  // namespace standin
