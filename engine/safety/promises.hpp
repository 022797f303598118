// What a title promises, held against the lines: "nut-free", "no garlic", "halal".
#pragma once

#include <vector>

#include "knowledge/knowledge.hpp"
#include "standin/formula.hpp"
#include "standin/prediction.hpp"

namespace standin {

/// One for each promise of the title that a line or a casing breaks or may break, and one for a diet that no record can vouch for.
std::vector<CautionText> broken_promises(const Formula& formula, const Knowledge& knowledge);

}  // namespace standin
