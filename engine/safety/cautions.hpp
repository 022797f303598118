// What must be said of a batch: always, or because of what is in it.
#pragma once

#include <string_view>
#include <vector>

#include "knowledge/index/knowledge.hpp"
#include "standin/prediction.hpp"

namespace standin {

/// The caution that says how hot the middle must get: its words come from the rule of the meat, not from its record.
constexpr std::string_view core_caution_id = "core-temperature";

/// How hot the middle must get; then what is special to this batch, the process and the foods first; then what is said of every batch, the
/// general rules before those of the rule set. The allergens of `prediction` must be filled in.
std::vector<CautionText> cautions_of(const Prediction& prediction, const Process& process, const Knowledge& knowledge,
                                     std::string_view rules);

/// Of these only what the process says by itself, whatever is in the batch: mixed warm, rested long.
std::vector<CautionText> cautions_of_process(const Process& process, const Knowledge& knowledge, std::string_view rules);

/// Of these only what holds for an ingredient by itself, in the order of the rules.
std::vector<CautionText> cautions_of_ingredient(const Ingredient& ingredient, const Knowledge& knowledge, std::string_view rules);

}  // namespace standin
