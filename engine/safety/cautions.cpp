#include "safety/cautions.hpp"

#include <algorithm>
#include <optional>
#include <string>

#include "safety/core_temperature.hpp"
#include "safety/wording.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

constexpr double warm_c = 10;  // common practice: above 10-12 C fat smears

struct Facts {
    const Prediction& prediction;
    const Formula& formula;
    std::vector<Present> lines;
    std::vector<Species> species;
    CoreTemperature core;
};

// A threshold on a property that holds: of one property and side only the most severe counts.
struct Threshold {
    std::string family;
    double severity = 0;
};

struct Holding {
    std::string extra;  // what of this batch makes it hold
    std::optional<Threshold> threshold;
};

std::optional<Property> property_in(std::string_view name) {
    if (name == "salt_of_meat") return Property::salt_pct_of_meat;
    return property_of(name);
}

std::optional<Holding> ingredient_holds(std::string_view word, const Facts& facts) {
    std::vector<std::string> names;
    for (const auto& [line, ingredient] : facts.lines) {
        const bool has = std::find(ingredient->cautions.begin(), ingredient->cautions.end(), word) != ingredient->cautions.end();
        if (has && std::find(names.begin(), names.end(), ingredient->names.front()) == names.end())
            names.push_back(ingredient->names.front());
    }
    if (names.empty()) return std::nullopt;
    return Holding{"Here: " + listed(names) + ".", {}};
}

std::optional<Holding> species_holds(std::string_view group, const Facts& facts) {
    const auto is_in = [&](Species s) {
        if (group == "poultry") return s == Species::chicken || s == Species::turkey || s == Species::duck;
        if (group == "fish") return s == Species::fish || s == Species::crustacean;
        return spelling(s) == group;
    };
    if (std::none_of(facts.species.begin(), facts.species.end(), is_in)) return std::nullopt;
    return Holding{};
}

std::optional<Holding> property_holds(std::string_view condition, const Facts& facts) {
    const auto sign = condition.find_first_of("<>");
    if (sign == std::string_view::npos) return std::nullopt;
    const auto property = property_in(condition.substr(0, sign));
    if (!property) return std::nullopt;
    if (*property == Property::salt_pct_of_meat && facts.prediction.meat_g <= 0) return std::nullopt;
    const double limit = number_in(condition.substr(sign + 1)).value_or(0);
    const double value = facts.prediction.nominal[*property];
    const bool below = condition[sign] == '<';
    if (below ? value >= limit : value <= limit) return std::nullopt;
    return Holding{"", Threshold{std::string(condition.substr(0, sign + 1)), below ? -limit : limit}};
}

// What the process says by itself, whatever is in the batch.
std::optional<Holding> stated_holds(std::string_view condition, const Process& process) {
    if (condition == "mixed_warm" && process.mixed_at_c && *process.mixed_at_c > warm_c) return Holding{};
    constexpr std::string_view rest = "rest>";
    if (condition.rfind(rest, 0) != 0) return std::nullopt;
    const double limit = number_in(condition.substr(rest.size())).value_or(0);
    if (!rests_beyond(process, limit)) return std::nullopt;
    return Holding{"Here: " + shown(*process.rest_h) + " hours.", {}};
}

std::optional<Holding> process_holds(std::string_view condition, const Facts& facts) {
    const Process& process = facts.formula.process;
    if (const auto stated = stated_holds(condition, process)) return stated;
    if (condition == "core<rule" && process.core_c && *process.core_c < facts.core.core_c)
        return Holding{"Here: " + shown(*process.core_c) + " C instead of " + shown_temperature(facts.core.core_c) + ".", {}};
    return std::nullopt;
}

std::optional<Holding> holds(std::string_view condition, const Facts& facts) {
    const auto colon = condition.find(':');
    if (colon == std::string_view::npos) return std::nullopt;
    const auto kind = condition.substr(0, colon), rest = condition.substr(colon + 1);
    if (kind == "ingredient") return ingredient_holds(rest, facts);
    if (kind == "species") return species_holds(rest, facts);
    if (kind == "property") return property_holds(rest, facts);
    if (kind == "process") return process_holds(rest, facts);
    return std::nullopt;
}

struct Candidate {
    CautionText text;
    std::optional<Threshold> threshold;
};

CautionText text_of(const Caution& caution, const Holding& holding) {
    return {caution.id, caution.text + (holding.extra.empty() ? "" : " " + holding.extra), caution.source};
}

std::vector<Candidate> candidates(const std::vector<const RuleSet*>& sets, const Facts& facts) {
    std::vector<Candidate> all;
    for (const RuleSet* set : sets)
        for (const auto& caution : set->cautions)
            for (const auto& condition : caution.when)
                if (const auto holding = holds(condition, facts)) {
                    all.push_back({text_of(caution, *holding), holding->threshold});
                    break;
                }
    return all;
}

bool is_most_severe(const Candidate& one, const std::vector<Candidate>& all) {
    return !one.threshold || std::none_of(all.begin(), all.end(), [&](const Candidate& other) {
        return other.threshold && other.threshold->family == one.threshold->family && other.threshold->severity > one.threshold->severity;
    });
}

CautionText core_caution(const CoreTemperature& core) {
    const std::string whom = core.species.empty() ? "" : ", for the " + listed(core.species) + " in it";
    return {"core-temperature", "Cook to at least " + shown_temperature(core.core_c) + " in the middle" + whom + ". " + core.rule->text,
            core.rule->source};
}

std::vector<const RuleSet*> sets_of(const Knowledge& knowledge, std::string_view rules) {
    std::vector<const RuleSet*> sets;
    if (const RuleSet* general = knowledge.rules("general")) sets.push_back(general);
    if (const RuleSet* chosen = knowledge.rules(rules); chosen && rules != "general") sets.push_back(chosen);
    return sets;
}

}  // namespace

bool rests_beyond(const Process& process, double hours) {
    constexpr double frozen_c = -17.7;  // the freezer of the cold storage chart: 0 F is -17.8 C
    const bool frozen = process.rest_at_c && *process.rest_at_c <= frozen_c;
    return process.rest_h && *process.rest_h > hours && !frozen;
}

std::vector<CautionText> cautions_of_ingredient(const Ingredient& ingredient, const Knowledge& knowledge, std::string_view rules) {
    constexpr std::string_view kind = "ingredient:";
    const auto carries = [&](const std::string& condition) {
        return condition.rfind(kind, 0) == 0 && std::find(ingredient.cautions.begin(), ingredient.cautions.end(),
                                                          condition.substr(kind.size())) != ingredient.cautions.end();
    };
    std::vector<CautionText> all;
    for (const RuleSet* set : sets_of(knowledge, rules))
        for (const auto& caution : set->cautions)
            if (std::any_of(caution.when.begin(), caution.when.end(), carries)) all.push_back({caution.id, caution.text, caution.source});
    return all;
}

std::vector<CautionText> cautions_of_process(const Process& process, const Knowledge& knowledge, std::string_view rules) {
    constexpr std::string_view kind = "process:";
    std::vector<CautionText> all;
    for (const RuleSet* set : sets_of(knowledge, rules))
        for (const auto& caution : set->cautions)
            for (const std::string_view condition : caution.when)
                if (condition.rfind(kind, 0) == 0)
                    if (const auto holding = stated_holds(condition.substr(kind.size()), process))
                        all.push_back(text_of(caution, *holding));
    return all;
}

std::vector<CautionText> cautions_of(const Prediction& prediction, const Formula& formula, const Knowledge& knowledge,
                                     std::string_view rules) {
    const auto sets = sets_of(knowledge, rules);
    const Facts facts{prediction, formula, present(prediction, knowledge), species_of(prediction, knowledge),
                      demanded_core(prediction, knowledge, rules)};

    std::vector<CautionText> all;
    if (facts.core.rule) all.push_back(core_caution(facts.core));
    for (const RuleSet* set : sets)
        for (const auto& caution : set->cautions)
            if (caution.when.empty()) all.push_back({caution.id, caution.text, caution.source});
    const auto held = candidates(sets, facts);
    for (const auto& one : held)
        if (is_most_severe(one, held)) all.push_back(one.text);
    return all;
}

}  // namespace standin
