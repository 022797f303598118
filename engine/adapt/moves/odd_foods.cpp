#include "adapt/moves/odd_foods.hpp"

#include "knowledge/index/kinds.hpp"
#include "knowledge/records/tissue.hpp"

namespace standin {

bool hard_grain(const Ingredient& food, const Knowledge& knowledge) {
    return food.roles.front() == Role::binder && belongs(food, "whole-dry", knowledge);
}

bool is_gum(const Ingredient& food, const Context& context) {
    return is_dry_binder(food) && food.most_g_per_kg && food.most_g_per_kg->band.mid <= context.constant("advice.gum.most");
}

bool is_capped(const Ingredient& food) { return food.most_g_per_kg || is_dry_binder(food); }

bool cured(const Ingredient& food, const Context& context) {
    constexpr double salted = 0.005;  // g NaCl in a gram; judgement
    Line line;
    line.ingredient = food.id;
    return food.meat && context.nominal().unit(line)[Amount::salt] >= salted;
}

}  // namespace standin
