#include "formula/food/line_prepared.hpp"

#include <algorithm>
#include <array>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "formula/food/namesakes.hpp"
#include "formula/food/tinned.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/words/changes_nothing.hpp"
#include "formula/words/open_question.hpp"
#include "knowledge/index/effects.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/records/tissue.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

// The measures of the knowledge are of the edible part: a clove of garlic is weighed without its skin. A potato has no part that is always
// waste, so its skin is in.
bool measured_without(const Prepared& prepared, const Ingredient& ingredient) {
    const auto& p = prepared.preparation;
    const bool skin_is_waste = ingredient.edible && (ingredient.tissue == Tissue::bulb || ingredient.tissue == Tissue::root);
    return p == "husked" || p == "shelled" || p == "trimmed" || (p == "peeled" && skin_is_waste);
}

// A volume of something that shrinks or swells on the way has no known weight.
std::optional<Error> unknown_volume(const MeasuredFood& food, bool changed_before) {
    const bool by_volume = !food.notes.grams && !counts(food.amount) && !by_weight(food.amount);
    if (by_volume && has_step(food.name.after.prepared, "dried")) return open_question("measured before drying or after: expected grams");
    if (by_volume && changed_before)
        return open_question("a " + std::string(food.amount.parts.front().unit->word) + " of " + food.name.ingredient->names.front() +
                             " prepared so has no known weight: expected grams");
    return std::nullopt;
}

// "Roasted, peeled and seeded": the skin is off with the charring, as the knowledge has it in one.
void join_roasting_and_peeling(std::vector<Prepared>& steps, const Ingredient& ingredient, const Knowledge& knowledge) {
    const auto* both = knowledge.preparation("roasted-peeled");
    if (!both || ingredient.tissue != Tissue::chile_flesh) return;
    for (std::size_t i = 0; i + 1 < steps.size(); ++i) {
        if (steps[i].preparation != "roasted" || steps[i + 1].preparation != "peeled") continue;
        steps[i].preparation = both->id;
        steps.erase(steps.begin() + static_cast<std::ptrdiff_t>(i) + 1);
    }
}

// Nuts and seeds are roasted as others are toasted: a pepper's heat burns them.
void roast_nuts_gently(std::vector<Prepared>& steps, const Ingredient& ingredient) {
    if (ingredient.tissue != Tissue::seed) return;
    for (auto& step : steps)
        if (step.preparation == "roasted") step.preparation = "toasted";
}

// "Roasted, roasted and peeled", "blanched, squeezed, squeezed": said twice, done once.
void drop_said_twice(std::vector<Prepared>& steps) {
    for (std::size_t i = 0; i + 1 < steps.size();) {
        Prepared& one = steps[i];
        const Prepared& next = steps[i + 1];
        const bool same = one.preparation == next.preparation && (!one.minutes || !next.minutes || one.minutes == next.minutes);
        const bool first_within = one.preparation == "roasted" && next.preparation == "roasted-peeled";
        const bool second_within = one.preparation == "roasted-peeled" && (next.preparation == "roasted" || next.preparation == "peeled");
        if (!same && !first_within && !second_within) {
            ++i;
            continue;
        }
        if (!one.minutes) one.minutes = next.minutes;
        if (first_within) one.preparation = next.preparation;
        steps.erase(steps.begin() + static_cast<std::ptrdiff_t>(i) + 1);
    }
}

// "5 g ground cumin" is bought so, where the seed is sold as well.
void take_ground_by_name(Line& line, const NameRead& name, const Knowledge& knowledge) {
    const bool powder = contains(name.words, "ground") || contains(name.words, "powder") || contains(name.words, "powdered");
    if (!powder || !line.prepared.empty() || !belongs(*name.ingredient, "whole-spice", knowledge)) return;
    line.prepared.push_back({"ground", std::nullopt});
    line.weighed_prepared = true;
}

// "8 g leek, dried" is bought dried, and so is a chile of any weight; a kilo of tomatoes may well be dried at home.
bool bought_dried(const Line& line, const AmountText& amount, const Ingredient& ingredient) {
    constexpr double most_grams = 30;  // judgement
    const auto& part = amount.parts.front();
    return has_step(line.prepared, "dried") && part.unit->dimension == Dimension::mass &&
           (ingredient.tissue == Tissue::chile_flesh || part.number.mid * part.unit->size.mid <= most_grams);
}

}  // namespace

bool counts(const AmountText& amount) {
    const Unit* unit = amount.parts.front().unit;
    return !unit || unit->dimension == Dimension::count;
}

bool by_weight(const AmountText& amount) {
    const Unit* unit = amount.parts.front().unit;
    return unit && (unit->dimension == Dimension::mass || unit->dimension == Dimension::percent);
}

// "Roasted poblanos, peeled", "blanched spinach, squeezed": nobody weighs in between, and weighed is what goes in.
bool goes_in_as_one(const Prepared& before, const Prepared& after, const Ingredient& food) {
    if (food.tissue == Tissue::chile_flesh) return before.preparation == "roasted" && after.preparation == "peeled";
    constexpr std::array<std::string_view, 5> heated{"blanched", "boiled", "steamed", "wilted", "cooked"};
    return is_leaf(food.tissue) && contains(heated, std::string_view(before.preparation)) && after.preparation == "squeezed";
}

std::optional<Error> settle_preparations(Line& line, const MeasuredFood& food) {
    const auto& [name, amount, notes, knowledge] = food;
    auto before = name.before.prepared, after = name.after.prepared;
    if (!before.empty() && !after.empty() && goes_in_as_one(before.back(), after.front(), *name.ingredient)) {
        before.push_back(after.front());
        after.erase(after.begin());
    }
    line.prepared = before;
    line.prepared.insert(line.prepared.end(), after.begin(), after.end());
    join_roasting_and_peeling(line.prepared, *name.ingredient, knowledge);
    roast_nuts_gently(line.prepared, *name.ingredient);
    drop_said_twice(line.prepared);
    if (line.prepared.empty()) {
        take_ground_by_name(line, name, knowledge);
        return std::nullopt;
    }
    if (notes.weighed_after) {
        line.weighed_prepared = *notes.weighed_after && !line.prepared.empty();
        return std::nullopt;
    }
    const bool by_measure = !notes.grams && !by_weight(amount);
    const auto done_already = [&](const Prepared& p) { return by_measure && measured_without(p, *food.name.ingredient); };
    const auto changes = [&](const Prepared& p) { return !done_already(p) && !changes_nothing(p, *food.name.ingredient, food.knowledge); };
    const bool changed_before = std::any_of(before.begin(), before.end(), changes),
               changed_after = std::any_of(after.begin(), after.end(), changes);
    const bool whole = counts(amount) && !notes.grams;
    if (whole && has_step(before, "dried"))
        return open_question("how much one dried piece of " + name.ingredient->names.front() + " weighs is not known: expected grams");
    line.weighed_prepared = !before.empty() && !whole && !changed_after;
    if (by_weight(amount) && !notes.grams && after.size() == 1 && before.empty() && bought_dried(line, amount, *name.ingredient))
        line.weighed_prepared = true;
    if (std::any_of(line.prepared.begin(), line.prepared.end(), done_already)) {
        if (changed_before || changed_after) std::erase_if(line.prepared, done_already);
        else line.weighed_prepared = true;
    }
    if (!whole && changed_before && changed_after)
        return open_question("weighed between two preparations: say which weight this is",
                             {"put all preparations behind a comma and weigh first", "add [weighed prepared]"});
    return unknown_volume(food, changed_before);
}

bool took_state_before_amount(const MeasuredFood& food, std::string_view behind_amount, Line& line) {
    const auto& [name, amount, notes, knowledge] = food;
    constexpr std::array<std::string_view, 9> wet_or_hot{"blanched", "boiled",         "steamed",     "wilted",  "cooked",
                                                         "roasted",  "roasted-peeled", "caramelised", "squeezed"};
    if (notes.weighed_after || notes.grams || !by_weight(amount) || !name.before.prepared.empty() || line.weighed_prepared) return false;
    const bool changed = std::any_of(line.prepared.begin(), line.prepared.end(),
                                     [&](const Prepared& one) { return contains(wet_or_hot, std::string_view(one.preparation)); });
    if (!changed) return false;
    // "Chard 420 g, blanched": what is done behind the weight is done after weighing.
    for (const auto& word : words_of(behind_amount)) {
        const auto* done = knowledge.preparation_named(word.folded);
        if (done && contains(wet_or_hot, std::string_view(done->id))) return false;
    }
    return line.weighed_prepared = true;
}

std::optional<Reason> bought_so(const NameRead& name, const Ingredient& ingredient) {
    const Tissue tissue = ingredient.tissue;
    const bool produce = tissue == Tissue::fruit || tissue == Tissue::bulb || tissue == Tissue::root || tissue == Tissue::stalk;
    const auto bought = [&](ReasonKind kind) { return make_reason(kind, {}, {ingredient.names.front()}); };
    if (produce && has_step(name.before.prepared, "pickled")) return bought(ReasonKind::bought_pickled);
    if (tissue == Tissue::fruit && has_step(name.before.prepared, "dried")) return bought(ReasonKind::bought_dried);
    const auto& salt = ingredient.composition.salt;
    if (salt.low < salt.mid / 2 && contains(ingredient.may_hold, "sulphite")) return bought(ReasonKind::bought_salted);
    return std::nullopt;
}

Error which_amount() {
    return {Trouble::bad_data,
            "a number stands before the name and a weight behind it: which is the amount, and what does the other tell",
            "",
            {"1000 g pork trim 50/50"}};
}

std::optional<Error> whole_animal(const MeasuredFood& food) {
    const std::string name = own_name(food.name);
    if (!food.knowledge.in_list(WordList::whole_animal, name)) return std::nullopt;
    const Unit* unit = food.amount.parts.front().unit;
    const auto whole = [](const std::vector<std::string>& words) { return contains(words, "whole") || contains(words, "entire"); };
    const bool counted = !unit || unit->word == "piece";
    if (!counted && !whole(food.name.before.words) && !whole(food.name.after.words)) return std::nullopt;
    return open_question(
        "a whole " + name + " is bones and skin too, and less than half of it meat: say what is cut from it, and its weight",
        {name + " thigh 900 g", name + " breast 500 g", name + " skin 150 g"});
}

std::optional<Error> seasoned_already(const NameRead& name, std::string_view written) {
    if (fold(name.generic) != "sausage meat" || fold(written).find("pork") != std::string::npos) return std::nullopt;
    return open_question("bought sausage meat is salted and spiced already, and often holds rusk (wheat): say what meat is meant",
                         {"ground pork", "pork shoulder"});
}

std::optional<Error> means_another(const NameRead& name, const AmountText& amount, bool in_each_kilo, const Knowledge& knowledge) {
    const Ingredient& ingredient = *name.ingredient;
    const Unit* unit = amount.parts.front().unit;
    const bool bare = name.before.words.empty() && name.after.words.empty();
    if (auto open = two_foods_of_one_name(name, amount, in_each_kilo, knowledge)) return open;
    const bool fresh = name.said_fresh || contains(name.before.words, "fresh") || contains(name.after.words, "fresh");
    if (fresh && ingredient.family == "dried-chiles" && contains(ingredient.already, "dried") && contains(ingredient.names, own_name(name)))
        return open_question("fresh, and yet the name of a dried chile: name the fresh pod, or the dried one without that word");
    if (unit && unit->dimension == Dimension::mass && !name.generic.empty() &&
        fold(ingredient.names.front()) == fold(name.generic) + " juice")
        return open_question("the juice, the zest or the whole fruit: say which",
                             {ingredient.names.front(), "zest of 1 " + fold(name.generic)});
    if (!unit && bare && name.is_unit_word) return open_question("cloves of garlic, or the spice", {"4 garlic cloves", "4 whole cloves"});
    const bool large_spoon = unit && (unit->word == "tbsp" || unit->word == "dessertspoon");
    if (ingredient.tissue == Tissue::root && large_spoon && bare && !name.other_form.empty())
        return open_question("a " + std::string(unit->word) + " of " + ingredient.names.front() + ": fresh and grated, or " +
                                 name.other_form + ", which is several times as strong",
                             {"1 tbsp grated " + ingredient.names.front(), "1 tbsp " + name.other_form});
    constexpr double small_volume = 60;  // mL: fresh chiles are measured by the cup. Judgement
    const bool spoon = unit && (unit->word == "pinch" || unit->word == "dash" ||
                                (unit->dimension == Dimension::volume && unit->size.mid * amount.parts.front().number.mid <= small_volume));
    const auto cut = [](const std::vector<std::string>& words) {
        return std::any_of(words.begin(), words.end(), [](const auto& w) { return w == "chopped" || w == "minced" || w == "diced"; });
    };
    if (ingredient.tissue == Tissue::chile_flesh && spoon && !cut(name.before.words) && !cut(name.after.words))
        return open_question("a " + std::string(unit->word) + " of " + ingredient.names.front() + ": fresh and chopped, or a ground spice",
                             {"1 tsp cayenne", "1 tsp crushed red pepper", "1 tsp chopped red pepper"});
    return std::nullopt;
}

std::optional<Error> chile_of_any_size(const MeasuredFood& food) {
    const auto& [name, amount, notes, knowledge] = food;
    const auto& id = name.ingredient->id;
    if (!counts(amount) || notes.grams) return std::nullopt;
    if (id == "anaheim" && contains(name.words, "long"))
        return Error{Trouble::bad_data,
                     "a long green chile by the piece may be a hot one of 15 g or a mild Anaheim of 70 g: expected grams, or the kind",
                     "",
                     {"green finger chilli", "anaheim chile", "2 long green chiles (30 g)"}};
    if (id != "green-chile" && id != "red-chile") return std::nullopt;
    const Unit* unit = amount.parts.front().unit;
    if (unit && unit->word != "piece" && unit->word != "pod") return std::nullopt;
    return Error{Trouble::bad_data,
                 "a " + name.ingredient->names.front() + " by the piece may weigh 5 g or 45 g: expected grams, or the kind",
                 "",
                 {"jalapeño", "serrano", "thai bird chile", "2 " + name.ingredient->names.front() + " (24 g)"}};
}

}  // namespace standin
