// What the scale is to show.
#pragma once

#include <vector>

#include "knowledge/index/knowledge.hpp"
#include "standin/sheet.hpp"

namespace standin {

/// One a line, in their order. Rounded to 1 g, or to 0.1 g where 1 g is too coarse (knowledge/models/bench.json).
std::vector<SheetWeight> weights_of(const Formula& formula, const Knowledge& knowledge);

}  // namespace standin
