#include "worksheet/label_draft.hpp"

#include <algorithm>
#include <cmath>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "core/words.hpp"
#include "safety/cap_values.hpp"
#include "safety/caps.hpp"
#include "safety/conditions.hpp"
#include "safety/core_temperature.hpp"
#include "safety/making_limits.hpp"
#include "safety/wording.hpp"
#include "standin/number_text.hpp"
#include "worksheet/label_rules.hpp"
#include "worksheet/nutrition.hpp"

namespace standin {
namespace {

constexpr double in_percent = 100;

std::string pct_text(double pct, double to) { return (pct < to ? fixed_text(pct, 1) : trimmed_text(std::round(pct / to) * to, 2)) + " %"; }

// Liver, heart, tongue: no law of meat counts them as the meat.
bool is_offal(const Ingredient& food) { return contains(food.cautions, "offal"); }

class Shares {
public:
    Shares(const Formula& formula, const Prediction& prediction, const Knowledge& knowledge, std::string_view rules)
        : title_(fold(formula.title)), batch_(counted(prediction, knowledge)), rules_(knowledge.rules(rules)) {
        rule_ = named_share_rule(knowledge, rules);
    }

    const NamedShareRule& rule() const { return rule_; }

    std::vector<NamedShare> all() const {
        std::vector<NamedShare> out;
        meats(out);
        for (const auto& [line, ingredient] : batch_.lines)
            if (ingredient->meat && is_offal(*ingredient)) add(out, ingredient->names.front(), line->grams, ReasonKind::meat_named);
        for (const auto& [line, ingredient] : batch_.lines)
            if (!ingredient->meat && in_title(*ingredient)) add(out, ingredient->names.front(), line->grams, ReasonKind::named_in_title);
        return out;
    }

private:
    double share(double grams) const { return in_percent * grams / batch_.batch_g; }

    NamedShare named(const std::string& name, double pct, ReasonKind kind) const {
        const Reason why = make_reason(kind, {{"share", {}, pct, "%"}}, {name});
        return {name, pct, name + " " + pct_text(pct, rule_.to), in_full(why), why};
    }

    void add(std::vector<NamedShare>& out, const std::string& name, double grams, ReasonKind why) const {
        const auto same = std::find_if(out.begin(), out.end(), [&](const NamedShare& s) { return s.name == name; });
        if (same == out.end()) out.push_back(named(name, share(grams), why));
        else *same = named(name, same->pct + share(grams), why);
    }

    double muscle_pct() const {
        double grams = 0;
        for (const auto& [line, ingredient] : batch_.lines)
            if (ingredient->meat && !is_offal(*ingredient)) grams += line->grams;
        return share(grams);
    }

    // Of one animal under its name, fat that the law does not let the word cover apart; of several each as it lies in the bowl.
    void meats(std::vector<NamedShare>& out) const {
        std::vector<Species> species;
        for (const auto& [line, ingredient] : batch_.lines)
            if (ingredient->meat && !is_offal(*ingredient) &&
                std::find(species.begin(), species.end(), ingredient->meat->species) == species.end())
                species.push_back(ingredient->meat->species);
        if (species.size() == 1 && rules_ && !rules_->meat_word.empty()) {
            const std::string name(spelling(species.front()));
            const double plain = muscle_pct(), legal = legal_meat_pct(batch_, rules_->meat_word);
            out.push_back(named(name, legal, ReasonKind::meat_always_named));
            constexpr double worth_naming = 0.5;  // %
            if (plain - legal >= worth_naming) out.push_back(named(name + " fat", plain - legal, ReasonKind::fat_named_apart));
            return;
        }
        for (const auto kind : species)
            for (const auto& [line, ingredient] : batch_.lines)
                if (ingredient->meat && !is_offal(*ingredient) && ingredient->meat->species == kind)
                    add(out, std::string(spelling(kind)), line->grams, ReasonKind::meat_named);
    }

    bool in_title(const Ingredient& ingredient) const {
        return std::any_of(ingredient.names.begin(), ingredient.names.end(),
                           [&](const std::string& name) { return has_words(title_, fold(name)); });
    }

    std::string title_;
    Counted batch_;
    const RuleSet* rules_;
    NamedShareRule rule_;
};

// Both scales, in Fahrenheit never warmer.
std::string or_colder(double celsius) {
    constexpr double given_back = 0.09;  // a rule in whole degrees Fahrenheit stands in the knowledge to 0.1 C
    return trimmed_text(celsius, 1) + " C (" + fixed_text(std::floor(celsius * 1.8 + 32 + given_back), 0) + " F) or colder";
}

std::string until(double hours) {
    constexpr double day = 24;
    if (hours <= 0) return "the day it is made";
    return hours < day ? shown_hours(hours) + " from making at most"
                       : trimmed_text(std::floor(hours / day), 0) + (hours < 2 * day ? " day" : " days") + " from making at most";
}

// How hot, how cold and how long are those of the strictest rules that hold for this batch.
void fill_in(std::vector<LabelLine>& lines, const Facts& facts, std::string_view rules) {
    const MakingLimit cold = limit_on(ProcessField::rest_at, facts, rules), rest = limit_on(ProcessField::rest, facts, rules);
    for (auto& line : lines) {
        replace_all(line.text, "{core}", shown_core({facts.core.core_c, facts.core.hold_s}));
        if (cold.rule) replace_all(line.text, "{cold}", or_colder(cold.rule->most));
        if (rest.rule) replace_all(line.text, "{until}", until(rest.rule->most));
    }
}

}  // namespace

LabelDraft label_draft(const Formula& formula, const Prediction& prediction, const Evaluator& evaluator, std::string_view rules) {
    const Knowledge& knowledge = evaluator.knowledge();
    LabelDraft draft;
    draft.rules = rules.empty() ? "general" : std::string(rules);
    const Shares shares(formula, prediction, knowledge, rules);
    draft.named = shares.all();
    draft.named_says = shares.rule().text;
    draft.named_source = shares.rule().source;
    draft.lines = label_lines(knowledge, rules);
    if (const RuleSet* law = knowledge.rules(rules); law && is_beside_the_law_of_meat(prediction, knowledge, *law))
        std::erase_if(draft.lines, [](const LabelLine& line) { return line.id == "handling"; });
    fill_in(draft.lines, facts_of(prediction, formula.process, knowledge, rules), rules);
    const NutritionRule rule = nutrition_rule(knowledge, rules);
    draft.nutrition = nutrition_of(formula, rule, evaluator);
    draft.nutrition_says = rule.text;
    draft.nutrition_source = rule.source;
    return draft;
}

}  // namespace standin
