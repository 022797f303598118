#include "safety/safety.hpp"

#include "safety/allergens.hpp"
#include "safety/caps.hpp"
#include "safety/cautions.hpp"
#include "safety/core_temperature.hpp"
#include "safety/label.hpp"
#include "safety/promises.hpp"

namespace standin {

void mark_safety(Prediction& prediction, const Formula& formula, const Knowledge& knowledge, std::string_view rules) {
    prediction.core_c = demanded_core(prediction, knowledge, rules).core_c;
    prediction.allergens = allergens_of(prediction, knowledge);
    prediction.cautions = cautions_of(prediction, formula, knowledge, rules);
    const auto promises = broken_promises(formula, knowledge);
    prediction.cautions.insert(prediction.cautions.begin(), promises.begin(), promises.end());
    if (const RuleSet* chosen = knowledge.rules(rules)) {
        const auto caps = cap_cautions(prediction, knowledge, *chosen);
        prediction.cautions.insert(prediction.cautions.end(), caps.begin(), caps.end());
    }
    prediction.label = label_of(prediction, knowledge);
}

}  // namespace standin
