#include "adapt/moves/food_price.hpp"

#include <algorithm>
#include <string_view>

#include "adapt/moves/odd_foods.hpp"
#include "core/contains.hpp"
#include "core/has_food.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/records/tissue.hpp"

namespace standin {

FoodPrice::FoodPrice(const Formula& formula, const Stock& stock, const Context& context)
    : formula_(formula), stock_(stock), context_(context) {
    for (const auto& line : formula.lines) {
        const Ingredient& food = *context.knowledge().ingredient(line.ingredient);
        allergens_.insert(food.allergens.begin(), food.allergens.end());
        // Lovage is no celery, and those who react to the one are told of the other: celery leaf in its place is nothing new to them.
        constexpr std::string_view kin = "cross-";
        for (const auto& caution : food.cautions)
            if (caution.starts_with(kin)) allergens_.insert(caution.substr(kin.size()));
    }
}

bool FoodPrice::in_formula(const Ingredient& food) const { return has_food(formula_, food.id); }

bool FoodPrice::brings_a_beast(const Ingredient& food) const {
    return food.meat && std::none_of(formula_.lines.begin(), formula_.lines.end(), [&](const Line& line) {
               const auto& meat = context_.knowledge().ingredient(line.ingredient)->meat;
               return meat && meat->species == food.meat->species;
           });
}

double FoodPrice::of_allergens(const Ingredient& food) const {
    const auto fresh = std::count_if(food.allergens.begin(), food.allergens.end(), [&](const auto& a) { return !allergens_.count(a); });
    return static_cast<double>(fresh) * context_.constant("advice.price.allergen");
}

double FoodPrice::of_doubts(const Ingredient& food) const {
    constexpr double perhaps = 0.5;  // of the packets; judgement
    if (stock_.names(food.id)) return 0;
    const auto doubtful = std::count_if(food.may_hold.begin(), food.may_hold.end(),
                                        [&](const auto& a) { return !allergens_.count(a) && !contains(food.allergens, a); });
    return perhaps * static_cast<double>(doubtful) * context_.constant("advice.price.allergen");
}

double FoodPrice::of_finding(const Ingredient& food) const {
    if (in_formula(food) || stock_.names(food.id)) return 0;
    const double unlisted = stock_.listed() ? context_.constant("advice.price.unlisted") : 0;
    if (belongs(food, "gathered", context_.knowledge())) return unlisted + context_.constant("advice.price.gathered");
    if (is_gum(food, context_) || belongs(food, "seldom-sold", context_.knowledge()))
        return unlisted + context_.constant("advice.price.seldom");
    return unlisted;
}

double FoodPrice::of_stand_in(const Ingredient& food, double closeness, bool asked_for) const {
    const double unlike = 1 - closeness;
    return context_.constant("advice.price.swap") * unlike * unlike +
           context_.constant(in_formula(food) || stock_.names(food.id) ? "advice.price.change" : "advice.price.new") +
           (asked_for ? context_.constant("advice.price.lever") : 0) + of_allergens(food) + of_finding(food) +
           (brings_a_beast(food) ? context_.constant("advice.price.beast") : 0);
}

double FoodPrice::of_second_part(const Ingredient& food) const {
    if (from_the_tap(food.id)) return 0;
    return context_.constant(in_formula(food) || stock_.names(food.id) ? "advice.price.second" : "advice.price.new") + of_allergens(food) +
           of_finding(food);
}

double FoodPrice::passed_over(const Ingredient& food, Role role, const Distance& distance) const {
    const auto listed = [&](auto which) {
        const auto& foods = context_.knowledge().records().ingredients;
        return std::any_of(foods.begin(), foods.end(), [&](const Ingredient& other) {
            return other.id != food.id && stock_.names(other.id) && stock_.can_bring(other) && which(other);
        });
    };
    const auto asks = [&](Property property, Goal::Kind kind) { return any_asks(distance.goals(), property, kind); };
    const double later = context_.constant("advice.price.passed-over");
    const auto lean_of_same = [&](const Line& line) {
        const Ingredient& own = *context_.knowledge().ingredient(line.ingredient);
        return !line.keep && own.meat && food.meat && own.roles.front() == Role::lean && own.meat->species == food.meat->species;
    };
    if (food.meat && food.roles.front() == Role::lean && asks_leaner(distance.goals()))
        return !in_formula(food) && !stock_.names(food.id) && std::any_of(formula_.lines.begin(), formula_.lines.end(), lean_of_same)
                   ? later
                   : 0;
    // More of the salmon that is there before mackerel is bought.
    const auto fat_of = [](const Ingredient& cut) { return cut.composition.fat.mid; };
    const auto has_own_fatter_cut = [&] {
        double leanest = 100, fattest = 0;
        for (const auto& line : formula_.lines)
            if (lean_of_same(line)) {
                const double fat = fat_of(*context_.knowledge().ingredient(line.ingredient));
                leanest = std::min(leanest, fat);
                fattest = std::max(fattest, fat);
            }
        return fattest > context_.constant("advice.meat.fatter") * leanest;
    };
    if (food.meat && food.roles.front() == Role::lean && asks(Property::fat_pct, Goal::Kind::at_least))
        return !in_formula(food) && !stock_.names(food.id) && has_own_fatter_cut() ? later : 0;
    if (role == Role::heat && asks(Property::heat_mg_kg, Goal::Kind::at_most)) return in_formula(food) ? 0 : later / 2;
    // Back fat, or a fatter cut of the same bird, before oil.
    const auto fatter_cut = [&](const Ingredient& o) {
        const double clearly = context_.constant("advice.meat.fatter");
        return o.meat && o.roles.front() == Role::lean && std::any_of(formula_.lines.begin(), formula_.lines.end(), [&](const Line& line) {
                   const Ingredient& own = *context_.knowledge().ingredient(line.ingredient);
                   return own.meat && own.roles.front() == Role::lean && own.meat->species == o.meat->species &&
                          o.composition.fat.mid >= clearly * own.composition.fat.mid;
               });
    };
    if (role == Role::fat && food.tissue == Tissue::liquid && !in_formula(food))
        return listed([&](const Ingredient& o) { return (o.roles.front() == Role::fat && o.tissue != Tissue::liquid) || fatter_cut(o); })
                   ? later
                   : 0;
    // Juice or vinegar of the list before a sauce, a paste or a fruit.
    const auto pours_sour = [](const Ingredient& o) { return o.roles.front() == Role::acid && o.tissue == Tissue::liquid; };
    if (role == Role::acid && asks(Property::sourness_mmol_kg, Goal::Kind::at_least) && !pours_sour(food) && !in_formula(food))
        return listed(pours_sour) ? later : 0;
    if (role == Role::binder && is_gum(food, context_) && !in_formula(food))
        return listed([&](const Ingredient& o) { return is_dry_binder(o) && !is_gum(o, context_); }) ? later : 0;
    return 0;
}

double FoodPrice::of_addition(const Ingredient& food, bool asked_for, double rare) const {
    const bool skin = food.meat && food.roles.front() == Role::fat && food.most_g_per_kg && !stock_.names(food.id);
    return (skin ? context_.constant("advice.price.skin") : 0) + context_.constant("advice.price.new") +
           (asked_for ? context_.constant("advice.price.lever") : 0) + context_.constant("advice.price.rare") * rare + of_doubts(food) +
           of_allergens(food) + of_finding(food);
}

}  // namespace standin
