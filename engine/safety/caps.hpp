// Legal limits on composition, held against a batch: spoken of only when broken or nearly so.
#pragma once

#include <string_view>
#include <vector>

#include "knowledge/index/knowledge.hpp"
#include "standin/prediction.hpp"

namespace standin {

/// The caps of a rule set that hold for a product of this title: those without names, and those of which a name stands in it. Of several
/// on one property the one with the longest name holds: "economy beef burger" before "burger", any name before none.
std::vector<const CapRule*> caps_for(std::string_view title, const RuleSet& rules);

/// What the batch does to the caps that hold for it. Texts start with "Over the limit", "Under the limit", "Just within the limit".
/// Whether the set names the animals that its law of meat is for, and none of them is in the batch: prawns under US rules.
bool is_beside_the_law_of_meat(const Prediction& prediction, const Knowledge& knowledge, const RuleSet& rules);

std::vector<CautionText> cap_cautions(const Prediction& prediction, const Knowledge& knowledge, const RuleSet& rules);

}  // namespace standin
