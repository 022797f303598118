#include "safety/core_temperature.hpp"

#include <algorithm>
#include <cmath>

#include "safety/wording.hpp"
#include "standin/temperature_text.hpp"

namespace standin {
namespace {

bool is_for(const CookRule& rule, Species species) {
    return std::find(rule.species.begin(), rule.species.end(), species) != rule.species.end();
}

void raise(CoreTemperature& core, const RuleSet* rules, const std::vector<Species>& species) {
    if (!rules) return;
    for (const auto& rule : rules->cooking) {
        const bool wanted = species.empty() || std::any_of(species.begin(), species.end(), [&](Species s) { return is_for(rule, s); });
        const CoreAsked asked{rule.core_c, rule.hold_s};
        if (wanted && asked > core) core = {asked, &rule, {}};
    }
}

}  // namespace

std::vector<Species> species_of(const Prediction& prediction, const Knowledge& knowledge) {
    std::vector<Species> all;
    for (const auto& [line, ingredient] : present(prediction, knowledge))
        if (ingredient->meat && std::find(all.begin(), all.end(), ingredient->meat->species) == all.end())
            all.push_back(ingredient->meat->species);
    return all;
}

CoreTemperature demanded_core(const Prediction& prediction, const Knowledge& knowledge, std::string_view rules) {
    CoreTemperature core;
    const auto species = species_of(prediction, knowledge);
    raise(core, knowledge.rules("general"), species);
    raise(core, knowledge.rules(rules), species);
    if (!core.rule) return core;
    bool others = false;
    for (const auto& [line, ingredient] : present(prediction, knowledge)) {
        if (!ingredient->meat) continue;
        if (!is_for(*core.rule, ingredient->meat->species)) others = true;
        else if (std::find(core.foods.begin(), core.foods.end(), ingredient->names.front()) == core.foods.end())
            core.foods.push_back(ingredient->names.front());
    }
    if (!others) core.foods.clear();
    return core;
}

std::string shown_core(const CoreAsked& core) { return core_temperature_text(core.core_c, core.hold_s); }

}  // namespace standin
