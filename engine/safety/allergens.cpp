#include "safety/allergens.hpp"

#include <algorithm>

#include "core/contains.hpp"
#include "knowledge/kinds.hpp"
#include "safety/wording.hpp"

namespace standin {
namespace {

constexpr double rounding = 1e-9;   // so that ten times one is ten
constexpr double wine_alcohol = 5;  // g in 100 g; what is weaker is beer or cider, with limits of its own

void add_once(std::vector<std::string>& all, const std::string& one) {
    if (!contains(all, one)) all.push_back(one);
}

// Every class in a fixed order, so that pages of different batches compare.
std::vector<std::string> classes_of(const std::vector<Present>& lines, const std::vector<Declared>& told, const Knowledge& knowledge) {
    std::vector<std::string> all;
    for (const auto& allergen : knowledge.records().allergens) add_once(all, allergen.id);
    for (const auto& rules : knowledge.records().rules)
        for (const auto& rule : rules.allergens) add_once(all, rule.allergen);
    for (const auto& [line, ingredient] : lines)
        for (const auto* words : {&ingredient->allergens, &ingredient->may_hold, &line->may_hold})
            for (const auto& allergen : *words) add_once(all, allergen);
    add_once(all, std::string(sulphite_class));
    for (const auto& one : told) add_once(all, one.allergen);
    return all;
}

bool holds_sulphites(const Ingredient& ingredient) { return ingredient.sulphites && ingredient.sulphites->band.high > 0; }

bool brings(const Ingredient& ingredient, std::string_view allergen) {
    if (allergen == sulphite_class && holds_sulphites(ingredient)) return true;
    return contains(ingredient.allergens, allergen);
}

// What the formula itself says it holds: of its lines and of its notes.
std::vector<Declared> told_of(const Prediction& prediction) {
    std::vector<Declared> all;
    for (const auto& line : prediction.lines)
        for (const auto& told : line.declared) all.push_back({told.allergen, line.name + " (\"" + told.words + "\")"});
    for (const auto& told : prediction.declared) all.push_back({told.allergen, "what the formula says (\"" + told.words + "\")"});
    return all;
}

struct Sulphites {
    const Prediction& prediction;
    const Knowledge& knowledge;

    bool declared(const AllergenRule& rule, const RuleSet& rules) const {
        return rule.allergen != sulphite_class || declares(rule, sulphites_mg_kg(prediction, knowledge, &rules));
    }
};

std::vector<std::pair<std::string, std::string>> declarations(std::string_view allergen, const Sulphites& sulphites) {
    std::vector<std::pair<std::string, std::string>> all;
    for (const auto& rules : sulphites.knowledge.records().rules)
        for (const auto& rule : rules.allergens)
            if (rule.allergen == allergen && sulphites.declared(rule, rules)) all.emplace_back(rules.code, rule.declare);
    return all;
}

// A food that itself counts among the sulphites' class brings it whatever the weight.
bool is_of_class(const std::vector<Present>& lines, std::string_view allergen) {
    return std::any_of(lines.begin(), lines.end(), [&](const Present& p) { return contains(p.ingredient->allergens, allergen); });
}

}  // namespace

double sulphites_mg_kg(const Prediction& prediction, const Knowledge& knowledge, const RuleSet* rules) {
    double milligrams = 0, kilograms = 0;
    for (const auto& [line, ingredient] : present(prediction, knowledge)) {
        kilograms += line->grams / 1000;
        if (!holds_sulphites(*ingredient)) continue;
        double most = ingredient->sulphites->band.high;
        if (rules && rules->wine_sulphites && ingredient->composition.alcohol.mid >= wine_alcohol)
            most = std::max(most, rules->wine_sulphites->band.high);
        milligrams += line->weighed_g / 1000 * most;
    }
    return kilograms > 0 ? milligrams / kilograms : 0;
}

bool declares(const AllergenRule& rule, double mg_kg) {
    if (rule.over_mg_kg) return mg_kg > *rule.over_mg_kg + rounding;
    return !rule.from_mg_kg || mg_kg >= *rule.from_mg_kg - rounding;
}

std::vector<std::string> may_hold_as_bought(const Line& line, const Knowledge& knowledge) {
    const bool dried =
        std::any_of(line.prepared.begin(), line.prepared.end(), [](const Prepared& step) { return step.preparation == "dried"; });
    const Ingredient* food = knowledge.ingredient(line.ingredient);
    if (!dried || !food || !belongs(*food, "sulphured-when-dried", knowledge)) return {};
    return {std::string(sulphite_class)};
}

std::vector<AllergenText> allergens_of(const Prediction& prediction, const Knowledge& knowledge) {
    const auto lines = present(prediction, knowledge);
    const Sulphites sulphites{prediction, knowledge};
    const auto told = told_of(prediction);
    const auto classes = classes_of(lines, told, knowledge);
    std::vector<AllergenText> all;
    for (const auto& allergen : classes) {
        AllergenText text{allergen, {}, {}};
        for (const auto& [line, ingredient] : lines)
            if (brings(*ingredient, allergen)) add_once(text.from, line->name);
        bool said = false;
        for (const auto& one : told)
            if (one.allergen == allergen) {
                add_once(text.from, one.words);
                said = true;
            }
        if (text.from.empty()) continue;
        text.declare = declarations(allergen, sulphites);
        if (!said && allergen == sulphite_class && text.declare.empty() && !is_of_class(lines, allergen)) continue;
        all.push_back(std::move(text));
    }
    for (const auto& allergen : classes) {
        if (std::any_of(all.begin(), all.end(), [&](const AllergenText& sure) { return sure.allergen == allergen; })) continue;
        AllergenText text{allergen, {}, {}, false};
        for (const auto& [line, ingredient] : lines)
            if (contains(ingredient->may_hold, allergen) || contains(line->may_hold, allergen)) add_once(text.from, line->name);
        if (!text.from.empty()) all.push_back(std::move(text));
    }
    // A food under a name of the maker's own was said to be like one that is known: what it holds itself nobody here can tell.
    for (const auto& [line, ingredient] : lines)
        if (line->name != ingredient->names.front()) all.push_back({"whatever " + line->name + " holds", {line->name}, {}, false});
    return all;
}

std::vector<std::string> new_allergens(const Prediction& base, const Prediction& variant) {
    std::vector<std::string> fresh;
    for (const auto& text : variant.allergens)
        if (text.sure && std::none_of(base.allergens.begin(), base.allergens.end(),
                                      [&](const AllergenText& old) { return old.sure && old.allergen == text.allergen; }))
            fresh.push_back(text.allergen);
    return fresh;
}

}  // namespace standin
