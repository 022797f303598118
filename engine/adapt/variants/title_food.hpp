// A food that the title names and that a variant has no longer.
#pragma once

#include <vector>

#include "knowledge/index/knowledge.hpp"
#include "standin/prediction.hpp"

namespace standin {

/// One caution a food: the title says chestnut, and none is in it.
std::vector<CautionText> title_foods_gone(const Formula& base, const Formula& variant, const Knowledge& knowledge);

}  // namespace standin
