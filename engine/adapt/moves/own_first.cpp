#include "adapt/moves/own_first.hpp"

#include <algorithm>

#include "core/has_food.hpp"

namespace standin {
namespace {

// More of a strong acid of the formula's own would do what is asked of the sourness: nobody then buys another.
bool has_own_acid_to_raise(const Formula& formula, const std::vector<bool>& missing, const Distance& distance, const Context& context) {
    const double strong = context.constant("advice.own-first.strong-acid");
    const double room_left = context.constant("advice.own-first.room-left");
    if (!any_asks(distance.goals(), Property::sourness_mmol_kg, Goal::Kind::at_least)) return false;
    const double kilos = distance.base_material()[Amount::mass] / 1000;
    for (std::size_t l = 0; l < formula.lines.size(); ++l) {
        const Line& line = formula.lines[l];
        const Ingredient& food = *context.knowledge().ingredient(line.ingredient);
        if (line.keep || missing[l] || food.roles.front() != Role::acid) continue;
        if (context.nominal().unit(line)[Amount::titratable] < strong) continue;
        if (!food.most_g_per_kg || line.grams.mid < room_left * food.most_g_per_kg->band.mid * kilos) return true;
    }
    return false;
}

// Cream, oil or lard on the list, for who wants it richer: that is used before more skin is asked for.
bool lists_a_fat(const Formula& formula, const Stock& stock, const Distance& distance, const Context& context) {
    if (!stock.listed() || !asks_richer(distance.goals())) return false;
    const auto& foods = context.knowledge().records().ingredients;
    return std::any_of(foods.begin(), foods.end(), [&](const Ingredient& food) {
        return food.roles.front() == Role::fat && stock.names(food.id) && stock.offer(food).on_hand && !has_food(formula, food.id);
    });
}

// The leaf of the formula's own goes up before it is changed for another: what is not missing stays.
bool has_own_leaf_to_raise(const Formula& formula, const std::vector<bool>& missing, const Distance& distance, const Context& context) {
    if (!any_asks(distance.goals(), Property::greenness, Goal::Kind::at_least)) return false;
    for (std::size_t l = 0; l < formula.lines.size(); ++l) {
        const Ingredient& food = *context.knowledge().ingredient(formula.lines[l].ingredient);
        if (food.roles.front() == Role::green && food.tissue == Tissue::thin_leaf && food.chlorophyll && !formula.lines[l].keep &&
            !missing[l])
            return true;
    }
    return false;
}

}  // namespace

bool lists_another_cut(const Formula& formula, const Stock& stock) {
    if (!stock.listed()) return false;
    const auto same_animal = [&](const Ingredient& food) {
        return std::any_of(formula.lines.begin(), formula.lines.end(), [&](const Line& line) {
            const auto& meat = stock.knowledge().ingredient(line.ingredient)->meat;
            return meat && meat->species == food.meat->species;
        });
    };
    const auto& foods = stock.knowledge().records().ingredients;
    return std::any_of(foods.begin(), foods.end(), [&](const Ingredient& food) {
        return food.meat && food.roles.front() == Role::lean && stock.names(food.id) && stock.offer(food).on_hand &&
               !has_food(formula, food.id) && same_animal(food);
    });
}

void own_food_first(AskedRoles& asked, const Problem& problem, const Stock& stock, const Distance& distance, const Context& context,
                    Leeway leeway) {
    if (asks_leaner(distance.goals()) && lists_another_cut(problem.formula, stock)) asked.add.insert(Role::lean);
    if (lists_a_fat(problem.formula, stock, distance, context)) {
        asked.only_listed_fat = asked.add.insert(Role::fat).second;
        asked.by_goal.insert(Role::fat);
    }
    // Nor is another acid poured so that it is less acid.
    if (any_asks(distance.goals(), Property::ph, Goal::Kind::at_least)) asked.replace.erase(Role::acid);
    if (leeway != Leeway::usual) return;
    // What hardly holds its own water is given none.
    if (distance.base().properties[Property::bind] < context.constant("advice.own-first.takes-water")) asked.add.erase(Role::liquid);
    if (has_own_leaf_to_raise(problem.formula, problem.missing, distance, context)) asked.replace.erase(Role::green);
    // Who wants it less sharp pours less: nobody buys another fruit for that.
    if (any_asks(distance.goals(), Property::sourness_mmol_kg, Goal::Kind::at_most)) asked.replace.erase(Role::acid);
    if (!has_own_acid_to_raise(problem.formula, problem.missing, distance, context)) return;
    asked.add.erase(Role::acid);
    asked.replace.erase(Role::acid);
}

double price_of_unlisted_meat(const Line& line, const Stock& stock, const Context& context) {
    const bool meat = context.knowledge().ingredient(line.ingredient)->meat.has_value();
    return meat && stock.listed() && !stock.names(line.ingredient) ? context.constant("advice.price.unlisted") : 0;
}

double price_beside_leaner(const Line& line, const Stock& stock, const Distance& distance, const Context& context) {
    constexpr double clearly = 0.05;  // g/g of fat; judgement
    const Ingredient& own = *context.knowledge().ingredient(line.ingredient);
    if (!own.meat || own.roles.front() != Role::lean || !stock.listed() || !asks_leaner(distance.goals())) return 0;
    const double fat = context.nominal().unit(line)[Amount::fat];
    const auto& foods = context.knowledge().records().ingredients;
    const bool leaner = std::any_of(foods.begin(), foods.end(), [&](const Ingredient& food) {
        const bool itself_trimmed = food.made_of == own.id;
        return food.meat && food.roles.front() == Role::lean && food.meat->species == own.meat->species && !itself_trimmed &&
               stock.names(food.id) && stock.can_bring(food) && food.composition.fat.mid / 100 + clearly < fat;
    });
    return leaner ? context.constant("advice.price.passed-over") : 0;
}

}  // namespace standin
