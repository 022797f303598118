#include "adapt/moves/scarce_lean.hpp"

#include <algorithm>

#include "core/has_food.hpp"

namespace standin {
namespace {

bool is_lean(const Ingredient& food) { return food.meat && food.roles.front() == Role::lean; }

// Whoever has so much lean and no more, in the formula or on the list, cannot make up for the fat that goes.
bool lean_is_weighed_out(const Formula& formula, const Stock& stock, const Knowledge& knowledge) {
    const auto& foods = knowledge.records().ingredients;
    return std::any_of(foods.begin(), foods.end(), [&](const Ingredient& food) {
        return is_lean(food) && (has_food(formula, food.id) || stock.names(food.id)) && stock.offer(food).grams;
    });
}

}  // namespace

double least_share_of_meat(const Formula& formula, const Stock& stock, const Distance& distance, Leeway leeway, const Context& context) {
    const bool scarce = asks_leaner(distance.goals()) && lean_is_weighed_out(formula, stock, context.knowledge());
    if (scarce && leeway == Leeway::all) return context.constant("advice.meat.scarce-least");
    const bool of_fat = scarce || asks_richer(distance.goals());
    return context.constant(of_fat ? "advice.meat.fat-least" : "advice.meat.least");
}

bool other_animal_may_come(const Ingredient& food, const Stock& stock, const Distance& distance, Leeway leeway) {
    return leeway == Leeway::all && asks_leaner(distance.goals()) && is_lean(food) && stock.listed() && stock.names(food.id);
}

}  // namespace standin
