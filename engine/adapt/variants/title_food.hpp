// A food that the title names and that a variant has no longer.
#pragma once

#include <vector>

#include "knowledge/index/knowledge.hpp"
#include "standin/prediction.hpp"

namespace standin {

/// One caution a food: the title says chestnut, and none is in it. Of an animal that `cautions` tell of already nothing is said twice.
std::vector<CautionText> title_foods_gone(const Formula& base, const Formula& variant, const std::vector<CautionText>& cautions,
                                          const Knowledge& knowledge);

}  // namespace standin
