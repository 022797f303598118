#include "safety/cautions.hpp"

#include <algorithm>
#include <optional>
#include <string>

#include "core/contains.hpp"
#include "core/words.hpp"
#include "safety/conditions.hpp"
#include "safety/making_limits.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

// The caution that is about the core: it is said first, with the temperature in it.
struct Candidate {
    CautionText text;
    std::optional<Threshold> threshold;
    bool of_process = false;
};

CautionText text_of(const Caution& caution, const Holding& holding) {
    return caution_text(reason_of(caution.id, caution.text, holding), reason_of(caution.id, caution.brief, holding), caution.source,
                        holding.foods);
}

bool is_of_process(const When& when) {
    return std::holds_alternative<ProcessBeyond>(when) || std::holds_alternative<CoreBelowRule>(when) ||
           std::holds_alternative<WarmsTooSlowly>(when) || std::holds_alternative<AcidFirst>(when) ||
           std::holds_alternative<OverMostInAKilo>(when);
}

// Grams of some foods in a kilo of the batch.
template <class Wanted>
double in_a_kilo(const Facts& facts, Wanted wanted) {
    double grams = 0, batch = 0;
    for (const auto& [line, ingredient] : facts.lines) {
        batch += line->grams;
        if (wanted(*ingredient)) grams += line->grams;
    }
    return batch > 0 ? 1000 * grams / batch : 0;
}

// A trace of it is not what the caution is about; garlic is kept in oil only where there is oil.
bool enough_to_say(const Caution& caution, const Holding& holding, const Facts& facts) {
    const std::string least = "caution.least." + caution.id, oil = "caution.oil." + caution.id;
    const Knowledge& knowledge = facts.knowledge;
    const auto named = [&](const Ingredient& i) { return contains(holding.foods, i.id); };
    const auto oily = [](const Ingredient& i) { return i.family == "fats-and-oils" && i.tissue == Tissue::liquid; };
    if (knowledge.has_parameter(least) && in_a_kilo(facts, named) < knowledge.parameter(least).mid) return false;
    return !knowledge.has_parameter(oil) || in_a_kilo(facts, oily) >= knowledge.parameter(oil).mid;
}

// What is said of everybody's plate is never cooler than what this batch asks for.
void heat_at_least(std::string& text, double core_c) {
    constexpr std::string_view open = "{core ", close = " C}";
    for (auto at = text.find(open); at != std::string::npos; at = text.find(open, at + 1)) {
        const auto number = at + open.size(), end = text.find(close, number);
        if (end == std::string::npos) return;
        const auto told = number_in(std::string_view(text).substr(number, end - number));
        if (told && *told < core_c) text.replace(number, end - number, shown(core_c));
    }
}

// How long the raw mass keeps and how cold are those of the strictest limit that holds for this batch, in every length of the caution.
void keep_to_limits(std::string& text, const Facts& facts, std::string_view rules) {
    const MakingLimit rest = limit_on(ProcessField::rest, facts, rules), cold = limit_on(ProcessField::rest_at, facts, rules);
    if (rest.rule)
        replace_all(text, "{keeps}",
                    rest.rule->keeps.empty() ? "raw it keeps no longer than " + shown_hours(rest.rule->most) : rest.rule->keeps);
    if (cold.rule) replace_all(text, "{cold}", "{" + shown(cold.rule->most) + " C or colder}");
}

bool is_for_this(const Caution& caution, const Facts& facts) {
    return std::all_of(caution.only.begin(), caution.only.end(), [&](const When& when) { return holds(when, facts).has_value(); });
}

// All the conditions that hold speak together: two foods of two conditions are both named.
std::optional<Candidate> candidate(const Caution& caution, const Facts& facts) {
    std::optional<Holding> all;
    bool of_process = false;
    for (const auto& when : caution.when) {
        auto one = holds(when, facts);
        if (!one) continue;
        of_process = of_process || is_of_process(when);
        if (!all) {
            all = std::move(one);
            continue;
        }
        // What is told by its name alone, as an allergen's bearer is, has no id.
        for (std::size_t i = 0; i < one->foods_said.size(); ++i) {
            if (i < one->foods.size() ? contains(all->foods, one->foods[i]) : contains(all->foods_said, one->foods_said[i])) continue;
            if (i < one->foods.size()) all->foods.push_back(one->foods[i]);
            all->foods_said.push_back(one->foods_said[i]);
        }
    }
    if (!all || !enough_to_say(caution, *all, facts)) return std::nullopt;
    Caution told = caution;
    if (facts.process.order == Order::salt_first && !caution.salted.empty()) told.text = caution.salted;
    for (auto* text : {&told.text, &told.brief}) heat_at_least(*text, facts.core.core_c);
    return Candidate{text_of(told, *all), all->threshold, of_process};
}

bool is_most_severe(const Candidate& one, const std::vector<Candidate>& all) {
    return !one.threshold || std::none_of(all.begin(), all.end(), [&](const Candidate& other) {
        return other.threshold && other.threshold->property == one.threshold->property && other.threshold->below == one.threshold->below &&
               other.threshold->severity > one.threshold->severity;
    });
}

CautionText core_caution(const Caution& caution, const CoreTemperature& core) {
    std::string text = caution.text;
    replace_all(text, "{core}", shown_core(core));
    std::string cooking = (core.foods.empty() ? "" : "For the " + listed(core.foods) + " in it. ") + core.rule->text;
    if (!core.sets.empty()) cooking = "Less does not set the " + listed(core.sets) + " in it.";
    replace_all(text, "{cooking}", cooking);
    Holding asked;
    asked.value = core.core_c;
    asked.unit = "C";
    std::string brief = caution.brief;
    replace_all(brief, "{core}", shown_core(core));
    return caution_text(reason_of(caution.id, text, asked), reason_of(caution.id, brief, asked), core.rule->source, {}, shown_core(core));
}

CautionText said_plainly(const Caution& caution) {
    return caution_text(reason_of(caution.id, caution.text, {}), reason_of(caution.id, caution.brief, {}), caution.source);
}

CautionText with_own_records(const std::string& folder) {
    Reason reason = make_reason(ReasonKind::own_records);
    reason.about = "overlay";
    reason.role = folder;
    return caution_text(std::move(reason), "judgement");
}

}  // namespace

std::vector<CautionText> cautions_of_ingredient(const Ingredient& ingredient, const Knowledge& knowledge, std::string_view rules) {
    const auto carries = [&](const When& when) {
        const auto* bears = std::get_if<IngredientBears>(&when);
        return bears && std::find(ingredient.cautions.begin(), ingredient.cautions.end(), bears->word) != ingredient.cautions.end();
    };
    std::vector<CautionText> all;
    for (const RuleSet* set : sets_of(knowledge, rules))
        for (const auto& caution : set->cautions)
            if (std::any_of(caution.when.begin(), caution.when.end(), carries))
                all.push_back(text_of(caution, Holding{{ingredient.id}, {ingredient.names.front()}}));
    return all;
}

std::vector<CautionText> cautions_of_process(const Process& process, const Knowledge& knowledge, std::string_view rules) {
    auto all = making_cautions(process, knowledge, rules);
    for (const RuleSet* set : sets_of(knowledge, rules))
        for (const auto& caution : set->cautions)
            for (const auto& condition : caution.when)
                if (const auto holding = stated(condition, process, knowledge)) all.push_back(text_of(caution, *holding));
    return all;
}

std::vector<CautionText> cautions_of(const Prediction& prediction, const Process& process, const Knowledge& knowledge,
                                     std::string_view rules) {
    const auto sets = sets_of(knowledge, rules);
    const Facts facts = facts_of(prediction, process, knowledge, rules);
    std::vector<CautionText> first, of_process = making_cautions(facts, rules), of_foods, always;
    std::vector<Candidate> held;
    for (const RuleSet* set : sets)
        for (const auto& caution : set->cautions) {
            if (!is_for_this(caution, facts)) continue;
            if (caution.id == core_caution_id && facts.core.rule) first.push_back(core_caution(caution, facts.core));
            else if (caution.when.empty()) {
                Caution told = caution;
                for (auto* text : {&told.text, &told.brief}) {
                    heat_at_least(*text, facts.core.core_c);
                    keep_to_limits(*text, facts, rules);
                }
                always.push_back(said_plainly(told));
            } else if (auto one = candidate(caution, facts)) held.push_back(std::move(*one));
        }
    for (const auto& one : held)
        if (is_most_severe(one, held)) (one.of_process ? of_process : of_foods).push_back(one.text);
    if (!knowledge.overlay().empty()) always.push_back(with_own_records(knowledge.overlay()));
    for (const auto* part : {&of_process, &of_foods, &always}) first.insert(first.end(), part->begin(), part->end());
    return first;
}

}  // namespace standin
