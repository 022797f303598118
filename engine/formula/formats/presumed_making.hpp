// Takes from the method what no line says of the making, and tells so.
#pragma once

#include "formula/formats/draft.hpp"

namespace standin {

/// What the formula says itself goes first.
void presume_making(Draft& draft, const Knowledge& knowledge);

}  // namespace standin
