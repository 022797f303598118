#include "adapt/moves/leaner_cut.hpp"

#include <algorithm>
#include <string>

#include "adapt/distance/fat_wants.hpp"
#include "core/names.hpp"
#include "knowledge/kinds.hpp"

namespace standin {
namespace {

bool asks_for_a_firmer_bite(const std::vector<Goal>& goals) {
    return any_asks(goals, Property::bind, Goal::Kind::at_least) || any_asks(goals, Property::firmness, Goal::Kind::at_least);
}

bool asks_of_the_fat(const std::vector<Goal>& goals) {
    return asks_leaner(goals) || any_asks(goals, Property::fat_pct, Goal::Kind::at_least);
}

// Quail is a bird of the kind, and no chicken; one salmon is not the next.
bool are_of_one_animal(const Ingredient& one, const Ingredient& other) {
    if (!one.meat || !other.meat || one.meat->species != other.meat->species || one.meat->species == Species::fish) return false;
    const std::string mine = " " + fold(one.names.front()) + " ", theirs = " " + fold(other.names.front()) + " ";
    for (std::size_t from = 0, to = mine.find(' ', 1); to != std::string::npos; from = to, to = mine.find(' ', to + 1))
        if (theirs.find(mine.substr(from, to + 1 - from)) != std::string::npos) return true;
    return false;
}

// Muscle of the animal that the line is of, with clearly less fat in it.
bool is_leaner_cut_of(const Ingredient& line, const Line& there, const Ingredient& food, const Context& context) {
    constexpr double clearly = 0.03;  // g/g of fat; judgement
    if (!are_of_one_animal(line, food) || food.roles.front() != Role::lean || belongs(food, "offal", context.knowledge())) return false;
    return food.composition.fat.mid / 100 + clearly < context.nominal().unit(there)[Amount::fat];
}

}  // namespace

void open_leaner_cuts(AskedRoles& asked, const Formula& formula, const Distance& distance, const Stock& stock, Leeway leeway) {
    if (!asks_for_a_firmer_bite(distance.goals()) || asks_of_the_fat(distance.goals())) return;
    const auto& foods = stock.knowledge().records().ingredients;
    const auto is_of_an_animal_there = [&](const Ingredient& food) {
        return std::any_of(formula.lines.begin(), formula.lines.end(), [&](const Line& line) {
            const auto& meat = stock.knowledge().ingredient(line.ingredient)->meat;
            return meat && food.meat && meat->species == food.meat->species;
        });
    };
    const bool listed = stock.listed() && std::any_of(foods.begin(), foods.end(), [&](const Ingredient& food) {
                            return food.roles.front() == Role::lean && stock.names(food.id) && is_of_an_animal_there(food);
                        });
    // A number is met whatever it takes; for a word nobody changes the meat of his sausage.
    const bool by_number = std::any_of(distance.goals().begin(), distance.goals().end(), [](const Goal& goal) {
        return goal.condition && (goal.property == Property::bind || goal.property == Property::firmness);
    });
    if ((leeway == Leeway::usual || !by_number) && !listed) return;
    for (auto* roles : {&asked.replace, &asked.down}) roles->insert(Role::lean);
}

bool may_change_the_cut(const Formula& formula, std::size_t l, const Ingredient& food, const Distance& distance, const Stock& stock,
                        const Context& context) {
    const Ingredient& own = *context.knowledge().ingredient(formula.lines[l].ingredient);
    const Role role = own.roles.front();
    if (!serves_fat_want(formula, l, food, distance, context)) return false;
    // Back fat that goes so that it is leaner makes room for lean, not for cheese.
    if (role == Role::fat && own.meat && asks_leaner(distance.goals())) return food.meat.has_value() || stock.names(food.id);
    // Nor for oil: of that there is just less.
    constexpr double all_fat = 80;  // g in 100 g
    const bool oil = role == Role::fat && own.tissue == Tissue::liquid && own.composition.fat.mid >= all_fat;
    if (oil && asks_leaner(distance.goals())) return stock.names(food.id);
    if (role != Role::lean || asks_of_the_fat(distance.goals()) || !asks_for_a_firmer_bite(distance.goals())) return true;
    return is_leaner_cut_of(own, formula.lines[l], food, context);
}

}  // namespace standin
