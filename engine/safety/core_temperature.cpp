#include "safety/core_temperature.hpp"

#include <algorithm>

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
        if (wanted && rule.core_c > core.core_c) core = {rule.core_c, &rule, {}};
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
    const auto species = species_of(prediction, knowledge);
    CoreTemperature core;
    raise(core, knowledge.rules("general"), species);
    raise(core, knowledge.rules(rules), species);
    if (core.rule)
        for (const Species s : species)
            if (is_for(*core.rule, s)) core.species.emplace_back(spelling(s));
    return core;
}

std::string shown_temperature(double celsius) { return core_temperature_text(celsius); }

}  // namespace standin
