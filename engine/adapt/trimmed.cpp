#include "adapt/trimmed.hpp"

#include <algorithm>

#include "core/has_food.hpp"
#include "knowledge/records/tissue.hpp"

namespace standin {
namespace {

const InventoryItem* listed(const Inventory& have, const std::string& food) {
    const auto item = std::find_if(have.items.begin(), have.items.end(), [&](const InventoryItem& i) { return i.ingredient == food; });
    return item == have.items.end() ? nullptr : &*item;
}

bool is_trimmed_meat(const Ingredient& food) { return food.meat && food.roles.front() == Role::lean && !food.made_of.empty(); }

// What is left for trimming of a cut that the formula takes as it is.
std::optional<double> left_to_trim(const InventoryItem& item, const Formula& formula) {
    constexpr double is_left = 0.75;  // of what is trimmed; judgement
    if (!item.grams) return std::nullopt;
    double taken = 0;
    for (const auto& line : formula.lines)
        if (line.ingredient == item.ingredient) taken += line.grams.mid;
    return is_left * std::max(0.0, *item.grams - taken);
}

// A number is met whatever it takes: there the cuts stay as they are told.
bool asks_leaner_in_a_word(const std::vector<Goal>& goals) { return asks_leaner(goals) && all_in_words(goals); }

// Whether the list has lean of the animal that is clearly leaner than the cut, and not in the formula: that goes before a knife is taken to
// the formula's own.
bool has_leaner(const Ingredient& own, const Inventory& have, const Formula& formula, const Knowledge& knowledge) {
    constexpr double clearly = 5;  // g fat in 100 g; judgement
    return std::any_of(have.items.begin(), have.items.end(), [&](const InventoryItem& item) {
        const Ingredient& other = *knowledge.ingredient(item.ingredient);
        return other.meat && other.roles.front() == Role::lean && other.meat->species == own.meat->species &&
               !has_food(formula, other.id) && other.composition.fat.mid + clearly < own.composition.fat.mid;
    });
}

}  // namespace

AdaptRequest with_trimmed_cuts(AdaptRequest request, const std::vector<Goal>& goals, const Formula& formula, const Knowledge& knowledge) {
    if (!request.have || !asks_leaner_in_a_word(goals)) return request;
    for (const bool own : {false, true})
        for (const auto& food : knowledge.records().ingredients) {
            if (!is_trimmed_meat(food) || has_food(*request.have, food.id) || has_food(formula, food.id)) continue;
            const InventoryItem* whole = listed(*request.have, food.made_of);
            if (!whole || has_food(formula, food.made_of) != own) continue;
            if (own && has_leaner(*knowledge.ingredient(food.made_of), *request.have, formula, knowledge)) continue;
            InventoryItem trimmed = *whole;
            trimmed.ingredient = food.id;
            trimmed.grams = left_to_trim(*whole, formula);
            trimmed.at_most.reset();
            if (trimmed.grams.value_or(1) > 0) request.have->items.push_back(std::move(trimmed));
        }
    return request;
}

void tell_what_is_trimmed(AdaptAnswer& answer, const AdaptRequest& asked, const AdaptRequest& trimmed, const Knowledge& knowledge) {
    if (!trimmed.have) return;
    const auto name = [&](const std::string& id) { return knowledge.ingredient(id)->names.front(); };
    for (auto i = asked.have ? asked.have->items.size() : 0; i < trimmed.have->items.size(); ++i) {
        const Ingredient& cut = *knowledge.ingredient(trimmed.have->items[i].ingredient);
        Reason told = make_reason(ReasonKind::trimmed_of, {}, {name(cut.id), name(cut.made_of)});
        if (is_bird(cut)) told.role = "skin";
        for (auto& variant : answer.variants)
            if (has_food(variant.formula, cut.id)) variant.gives_back.insert(variant.gives_back.begin(), told);
    }
}

}  // namespace standin
