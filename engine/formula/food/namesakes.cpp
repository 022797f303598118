#include "formula/food/namesakes.hpp"

#include <algorithm>
#include <array>
#include <string>
#include <utility>
#include <vector>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "formula/words/open_question.hpp"
#include "knowledge/index/effects.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

// "fresh basil"; what is called fresh in the records is not called so twice.
std::string fresh_name(const Ingredient& ingredient) {
    const std::string& name = ingredient.names.front();
    return name.starts_with("fresh ") ? name : "fresh " + name;
}

template <class Wanted>
bool says_any(const NameRead& name, Wanted wanted) {
    return (name.said_fresh && wanted("fresh")) || std::any_of(name.before.words.begin(), name.before.words.end(), wanted) ||
           std::any_of(name.after.words.begin(), name.after.words.end(), wanted);
}

bool says(const NameRead& name, const std::vector<std::string>& wanted) {
    return says_any(name, [&](const std::string& word) { return contains(wanted, word); });
}

bool says(const NameRead& name, WordList list, const Knowledge& knowledge) {
    return says_any(name, [&](const std::string& word) { return knowledge.in_list(list, word); });
}

bool done_to(const NameRead& name, const std::vector<std::string>& preparations) {
    return std::any_of(preparations.begin(), preparations.end(), [&](const std::string& step) {
        return has_step(name.before.prepared, step) || has_step(name.after.prepared, step);
    });
}

bool measured_by(const std::string& by, const Unit* unit) {
    if (by == "count") return !unit;
    return unit && (by == "weight" ? unit->dimension == Dimension::mass : unit->word == by);
}

struct AmountTold {
    const Unit* unit = nullptr;
    std::optional<double> grams;  ///< where it is weighed for the whole batch
};

bool may_be_either(const Namesake& one, const NameRead& name, const AmountTold& told) {
    if (!contains(one.names, own_name(name)) && !contains(one.trade_words, fold(name.generic))) return false;
    if (done_to(name, one.done_to)) return true;
    if (says(name, one.told_by)) return false;
    if (one.below_g && (!told.grams || *told.grams >= *one.below_g)) return false;
    return one.by.empty() || std::any_of(one.by.begin(), one.by.end(), [&](const auto& by) { return measured_by(by, told.unit); });
}

// Asked of the name however it is measured and whatever stands beside it.
bool whatever_is_said(const Namesake& one) { return one.by.empty() && one.told_by.empty() && !one.below_g; }

// So little of a fresh food that a dry one of its name is more likely meant.
std::optional<Error> dry_one_more_likely(const NameRead& name, double grams, const Knowledge& knowledge) {
    constexpr double spice_grams = 10, pepper_grams = 20;  // fresh ones are weighed by more. Judgement
    if (grams >= pepper_grams || says(name, WordList::fresh_however_little, knowledge)) return std::nullopt;
    const bool said_ground = says(name, WordList::ground_to_powder, knowledge);
    const bool said_crushed = says(name, WordList::crushed_coarsely, knowledge);
    if (name.ingredient->tissue == Tissue::chile_flesh && (said_ground || said_crushed))
        return open_question("so little of it ground is more likely the dry spice than the fresh pod minced: say which",
                             {"cayenne", "crushed red pepper", "minced " + name.ingredient->names.front()});
    if (grams >= spice_grams) return std::nullopt;
    constexpr std::array juicy{Tissue::root, Tissue::fungus, Tissue::fruit, Tissue::stalk};
    if (contains(juicy, name.ingredient->tissue) && name.other_form.empty() && said_ground)
        return open_question("so little of it ground is more likely a dry powder than the fresh one: say which",
                             {"minced " + fresh_name(*name.ingredient)});
    if (name.other_form.empty()) return std::nullopt;
    if (name.ingredient->roles.front() == Role::herb && name.ingredient->tissue != Tissue::dry && said_crushed)
        return open_question("so little of it is more likely " + name.other_form + " than the fresh leaf: say which",
                             {name.other_form, fresh_name(*name.ingredient)});
    if (name.ingredient->tissue == Tissue::root)
        return open_question("so little of it is more likely " + name.other_form + " than the fresh root: say which",
                             {name.other_form, fresh_name(*name.ingredient)});
    return std::nullopt;
}

}  // namespace

std::optional<Error> two_foods_of_one_name(const NameRead& name, const AmountText& amount, bool in_each_kilo, const Knowledge& knowledge) {
    AmountTold told{amount.parts.front().unit, {}};
    if (told.unit && told.unit->dimension == Dimension::mass && !in_each_kilo)
        told.grams = amount.parts.front().number.mid * told.unit->size.mid;
    for (const auto& one : knowledge.records().lexicon.namesakes)
        if (may_be_either(one, name, told)) return open_question(one.question, one.hints);
    return told.grams ? dry_one_more_likely(name, *told.grams, knowledge) : std::nullopt;
}

void take_named_in_brackets(NameRead& name, LineNotes& notes, const Knowledge& knowledge) {
    if (notes.passed.empty()) return;
    for (const auto& one : knowledge.records().lexicon.namesakes) {
        if (!contains(one.names, own_name(name)) && !contains(one.trade_words, fold(name.generic))) continue;
        for (auto passed = notes.passed.begin(); passed != notes.passed.end(); ++passed) {
            const auto* told = knowledge.ingredient_named(*passed);
            const bool asked_about = told && std::any_of(one.hints.begin(), one.hints.end(),
                                                         [&](const std::string& hint) { return knowledge.ingredient_named(hint) == told; });
            if (!asked_about) continue;
            name.ingredient = told;
            name.generic.clear();
            name.words = {fold(*passed)};
            notes.passed.erase(passed);
            return;
        }
    }
}

bool shared_by_two_foods(std::string_view name, const Knowledge& knowledge) {
    const auto& all = knowledge.records().lexicon.namesakes;
    return std::any_of(all.begin(), all.end(),
                       [&](const Namesake& one) { return whatever_is_said(one) && contains(one.names, fold(name)); });
}

bool is_between_namesakes(const Error& error, const Knowledge& knowledge) {
    const auto& all = knowledge.records().lexicon.namesakes;
    return std::any_of(all.begin(), all.end(), [&](const Namesake& one) { return whatever_is_said(one) && one.question == error.message; });
}

}  // namespace standin
