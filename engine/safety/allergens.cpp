#include "safety/allergens.hpp"

#include <algorithm>

#include "safety/wording.hpp"

namespace standin {
namespace {

constexpr double rounding = 1e-9;  // so that ten times one is ten

void add_once(std::vector<std::string>& all, const std::string& one) {
    if (std::find(all.begin(), all.end(), one) == all.end()) all.push_back(one);
}

// Every class in a fixed order, so that pages of different batches compare.
std::vector<std::string> classes_of(const std::vector<Present>& lines, const Knowledge& knowledge) {
    std::vector<std::string> all;
    for (const auto& rules : knowledge.records().rules)
        for (const auto& rule : rules.allergens) add_once(all, rule.allergen);
    for (const auto& [line, ingredient] : lines)
        for (const auto& allergen : ingredient->allergens) add_once(all, allergen);
    add_once(all, std::string(sulphite_class));
    return all;
}

bool brings(const Ingredient& ingredient, std::string_view allergen) {
    if (allergen == sulphite_class && ingredient.sulphites && ingredient.sulphites->band.high > 0) return true;
    return std::find(ingredient.allergens.begin(), ingredient.allergens.end(), allergen) != ingredient.allergens.end();
}

std::vector<std::pair<std::string, std::string>> declarations(std::string_view allergen, double sulphite, const Knowledge& knowledge) {
    std::vector<std::pair<std::string, std::string>> all;
    for (const auto& rules : knowledge.records().rules)
        for (const auto& rule : rules.allergens)
            if (rule.allergen == allergen && (allergen != sulphite_class || declares_sulphite(rules.code, sulphite)))
                all.emplace_back(rules.code, rule.declare);
    return all;
}

}  // namespace

double sulphites_mg_kg(const Prediction& prediction, const Knowledge& knowledge) {
    double milligrams = 0, kilograms = 0;
    for (const auto& [line, ingredient] : present(prediction, knowledge)) {
        kilograms += line->grams / 1000;
        if (ingredient->sulphites) milligrams += line->weighed_g / 1000 * ingredient->sulphites->band.high;
    }
    return kilograms > 0 ? milligrams / kilograms : 0;
}

bool declares_sulphite(std::string_view code, double mg_kg) {
    const bool only_above = code == "eu" || code == "uk";  // Regulation (EU) No 1169/2011, Annex II 12: "more than 10 mg/kg"
    return only_above ? mg_kg > sulphite_limit_mg_kg + rounding : mg_kg >= sulphite_limit_mg_kg - rounding;
}

std::vector<AllergenText> allergens_of(const Prediction& prediction, const Knowledge& knowledge) {
    const auto lines = present(prediction, knowledge);
    const double sulphite = sulphites_mg_kg(prediction, knowledge);
    std::vector<AllergenText> all;
    for (const auto& allergen : classes_of(lines, knowledge)) {
        if (allergen == sulphite_class && sulphite < sulphite_limit_mg_kg - rounding) continue;
        AllergenText text{allergen, {}, {}};
        for (const auto& [line, ingredient] : lines)
            if (brings(*ingredient, allergen)) add_once(text.from, ingredient->names.front());
        if (text.from.empty()) continue;
        text.declare = declarations(allergen, sulphite, knowledge);
        all.push_back(std::move(text));
    }
    return all;
}

std::vector<std::string> new_allergens(const Prediction& base, const Prediction& variant) {
    std::vector<std::string> fresh;
    for (const auto& text : variant.allergens)
        if (std::none_of(base.allergens.begin(), base.allergens.end(),
                         [&](const AllergenText& old) { return old.allergen == text.allergen; }))
            fresh.push_back(text.allergen);
    return fresh;
}

}  // namespace standin
