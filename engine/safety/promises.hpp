// What a title promises, held against the lines: "nut-free", "no garlic", "halal".
#pragma once

#include <vector>

#include "knowledge/index/knowledge.hpp"
#include "safety/goes_without.hpp"
#include "standin/formula.hpp"
#include "standin/prediction.hpp"

namespace standin {

/// One for each promise of the title that a line or a casing breaks or may break, and one for a diet that no record can vouch for.
std::vector<CautionText> broken_promises(const Formula& formula, const Knowledge& knowledge);

/// What those who eat it are advised to leave (the pregnant, children, the old and the ill) and what the diet of the title takes in: one
/// for each people and diet that is named. Nothing of it is to be brought in.
std::vector<GoesWithout> kept_from_eaters(const Formula& formula, const Knowledge& knowledge);

/// Whether the title or a note names people whom germs harm more.
bool is_for_the_frail(const Formula& formula, const Knowledge& knowledge);

}  // namespace standin
