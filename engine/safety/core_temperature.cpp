#include "safety/core_temperature.hpp"

#include <algorithm>
#include <cmath>

#include "core/contains.hpp"
#include "evaluate/predict.hpp"
#include "knowledge/index/kinds.hpp"
#include "safety/title_words.hpp"
#include "safety/wording.hpp"
#include "standin/temperature_text.hpp"

namespace standin {
namespace {

bool is_for(const CookRule& rule, const Ingredient& food) {
    const auto is_marked = [&](const std::string& mark) { return contains(food.cautions, mark); };
    return (food.meat && contains(rule.species, food.meat->species)) || std::any_of(rule.marks.begin(), rule.marks.end(), is_marked);
}

void raise(CoreTemperature& core, const RuleSet* rules, const std::vector<const Ingredient*>& foods) {
    if (!rules) return;
    const bool any_meat = std::any_of(foods.begin(), foods.end(), [](const Ingredient* food) { return food->meat.has_value(); });
    for (const auto& rule : rules->cooking) {
        const bool is_asked = std::any_of(foods.begin(), foods.end(), [&](const Ingredient* food) { return is_for(rule, *food); });
        const bool is_any_meats = !any_meat && !rule.species.empty();
        const CoreAsked asked{rule.core_c, rule.hold_s};
        if ((is_asked || is_any_meats) && asked > core) core = {asked, &rule, {}};
    }
}

// Rules for those who eat it, where the title, a note or a line of the recipe names them: a mark that is a kind and no food bears.
void raise_for_eaters(CoreTemperature& core, const Prediction& prediction, const Knowledge& knowledge) {
    const RuleSet* general = knowledge.rules("general");
    if (!general) return;
    const TitleWords title(prediction.title, knowledge);
    const bool guests = !words_of_guests(said_of_guests(prediction.read_as), knowledge).empty();
    for (const auto& rule : general->cooking)
        for (const auto& mark : rule.marks) {
            const Kind* eaters = kind_of(mark, knowledge);
            const CoreAsked asked{rule.core_c, rule.hold_s};
            if (eaters && eaters->diet && asked > core && (guests || title.promise_of(*eaters))) core = {asked, &rule, {}};
        }
}

// Starch, flour and egg: a binder that heat sets, and that nothing has set before.
bool sets_in_the_heat(const Ingredient& food) {
    return !food.roles.empty() && food.roles.front() == Role::binder && food.binding && food.binding->sets == "hot" &&
           food.binding->gel != "made";
}

std::vector<std::string> what_sets_in_the_heat(const Prediction& prediction, const Knowledge& knowledge) {
    std::vector<std::string> names;
    for (const auto& [line, ingredient] : present(prediction, knowledge))
        if (sets_in_the_heat(*ingredient) && !contains(names, line->name)) names.push_back(line->name);
    return names;
}

}  // namespace

CoreAsked asked_at(double celsius, const CoreTemperature& demanded) {
    const bool at_once = demanded.rule && demanded.rule->at_once_c && celsius >= *demanded.rule->at_once_c;
    return {celsius, at_once ? 0 : demanded.hold_s};
}

std::vector<Species> species_of(const Prediction& prediction, const Knowledge& knowledge) {
    std::vector<Species> all;
    for (const auto& [line, ingredient] : present(prediction, knowledge))
        if (ingredient->meat && std::find(all.begin(), all.end(), ingredient->meat->species) == all.end())
            all.push_back(ingredient->meat->species);
    return all;
}

CoreTemperature demanded_core(const Prediction& prediction, const Knowledge& knowledge, std::string_view rules) {
    CoreTemperature core;
    std::vector<const Ingredient*> foods;
    for (const auto& [line, ingredient] : present(prediction, knowledge)) foods.push_back(ingredient);
    raise(core, knowledge.rules("general"), foods);
    raise(core, knowledge.rules(rules), foods);
    raise_for_eaters(core, prediction, knowledge);
    if (!core.rule) return core;
    bool others = false;
    for (const Ingredient* ingredient : foods) {
        const bool asks = is_for(*core.rule, *ingredient);
        if (!ingredient->meat && !asks) continue;
        if (!asks) others = true;
        else if (std::find(core.foods.begin(), core.foods.end(), ingredient->names.front()) == core.foods.end())
            core.foods.push_back(ingredient->names.front());
    }
    if (!others) core.foods.clear();
    return core;
}

CoreTemperature asked_core(const Prediction& prediction, const Process& process, const Knowledge& knowledge, std::string_view rules) {
    return asked_core(demanded_core(prediction, knowledge, rules), prediction, process, knowledge);
}

CoreTemperature asked_core(CoreTemperature core, const Prediction& prediction, const Process& process, const Knowledge& knowledge) {
    double celsius = std::max(core.core_c, process.core_c.value_or(0));
    const Condition* setting = process.core_c || !process.core_curve.empty() ? nullptr : knowledge.condition("cooked");
    if (setting && setting->least && *setting->least > celsius) {
        core.sets = what_sets_in_the_heat(prediction, knowledge);
        if (!core.sets.empty()) celsius = *setting->least;
    }
    static_cast<CoreAsked&>(core) = asked_at(celsius, core);
    return core;
}

std::optional<double> core_beyond_the_written(const Formula& formula, const Knowledge& knowledge, std::string_view rules) {
    if (formula.process.core_curve.size() > 1) return std::nullopt;
    const CoreTemperature needed = demanded_core(weights_only(formula, knowledge), knowledge, rules);
    const bool short_of_it = needed.rule && formula.process.core_c.value_or(0) < needed.core_c;
    return short_of_it ? std::optional(needed.core_c) : std::nullopt;
}

std::string shown_core(const CoreAsked& core) { return core_temperature_text(core.core_c, core.hold_s); }

}  // namespace standin
