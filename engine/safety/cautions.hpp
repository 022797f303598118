// What must be said of a batch: always, or because of what is in it.
//
// Conditions of the rule sets, any of which is enough:
//   ingredient:<word>       an ingredient has <word> among its cautions
//   species:poultry|game|fish   poultry is chicken, turkey, duck; fish takes in shellfish
//   property:<name><<number> or ><number>   ph, heat (mg/kg), fat (% of batch), salt_of_meat (% of meat), at the middle of the band;
//                           of several on one property and side, only the most severe that holds is said
//   process:core<rule       the core temperature of the process is below the most demanding cooking rule
//   process:mixed_warm      mixing ends above 10 C
//   process:rest><hours>    the process itself says a longer rest before cooking, and not in a freezer
#pragma once

#include <string_view>
#include <vector>

#include "knowledge/knowledge.hpp"
#include "standin/prediction.hpp"

namespace standin {

/// The core temperature first, then what is always said (the general rules, then those of the rule set), then what holds for this batch.
std::vector<CautionText> cautions_of(const Prediction& prediction, const Formula& formula, const Knowledge& knowledge,
                                     std::string_view rules);

/// Of these only what the process says by itself, whatever is in the batch: mixed warm, rested long.
std::vector<CautionText> cautions_of_process(const Process& process, const Knowledge& knowledge, std::string_view rules);

/// Of these only what holds for an ingredient by itself, in the order of the rules.
std::vector<CautionText> cautions_of_ingredient(const Ingredient& ingredient, const Knowledge& knowledge, std::string_view rules);

/// Whether the process states a rest of more than `hours` before cooking, and not in a freezer (0 F or colder).
bool rests_beyond(const Process& process, double hours);

}  // namespace standin
