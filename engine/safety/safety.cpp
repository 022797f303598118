#include "safety/safety.hpp"

#include "safety/allergens.hpp"
#include "safety/caps.hpp"
#include "safety/cautions.hpp"
#include "safety/core_temperature.hpp"
#include "safety/label.hpp"
#include "safety/promises.hpp"

namespace standin {

void mark_safety(Prediction& prediction, const Formula& formula, const Knowledge& knowledge, std::string_view rules) {
    prediction.overlay = knowledge.overlay();
    const CoreTemperature demanded = demanded_core(prediction, knowledge, rules);
    prediction.core = {demanded.core_c, demanded.hold_s};
    prediction.allergens = allergens_of(prediction, knowledge);
    prediction.cautions = cautions_of(prediction, formula.process, knowledge, rules);
    auto special = broken_promises(formula, knowledge);
    if (const RuleSet* chosen = knowledge.rules(rules))
        for (auto& cap : cap_cautions(prediction, knowledge, *chosen)) special.push_back(std::move(cap));
    // After the core, before everything else.
    const auto first = prediction.cautions.begin() + (prediction.cautions.empty() ? 0 : 1);
    prediction.cautions.insert(first, special.begin(), special.end());
    prediction.label = label_of(prediction, knowledge);
}

}  // namespace standin
