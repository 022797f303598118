#include "adapt/moves/leaner_cut.hpp"

#include <algorithm>
#include <string>

#include "adapt/distance/fat_wants.hpp"
#include "adapt/moves/own_first.hpp"
#include "core/names.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/records/tissue.hpp"

namespace standin {
namespace {

// A firmer bite, and nothing of the fat, which has cuts of its own.
bool asks_for_the_bite_alone(const std::vector<Goal>& goals) { return asks_firmer(goals) && !asks_leaner(goals) && !asks_richer(goals); }

// A number is met whatever it takes; for a word nobody changes the meat of his sausage.
bool asks_by_number(const std::vector<Goal>& goals) {
    return std::any_of(goals.begin(), goals.end(), [](const Goal& goal) {
        return goal.condition && (goal.property == Property::bind || goal.property == Property::firmness);
    });
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
    if (!asks_for_the_bite_alone(distance.goals())) return;
    if ((leeway == Leeway::usual || !asks_by_number(distance.goals())) && !lists_another_cut(formula, stock)) return;
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
    if (is_oil(own) && asks_leaner(distance.goals())) return stock.names(food.id);
    if (role != Role::lean || !asks_for_the_bite_alone(distance.goals())) return true;
    return (stock.names(food.id) || asks_by_number(distance.goals())) && is_leaner_cut_of(own, formula.lines[l], food, context);
}

}  // namespace standin
