#include "adapt/moves/also_brings.hpp"

#include <algorithm>

namespace standin {
namespace {

// Mustard is there for itself.
bool is_seasoning(Role role) { return role == Role::spice || role == Role::herb || role == Role::allium; }

}  // namespace

bool brings_acid(const Line& line, double batch_acid, const Context& context) {
    constexpr double share = 0.05;  // of the batch's acid
    return !is_seasoning(context.knowledge().ingredient(line.ingredient)->roles.front()) &&
           context.nominal().unit(line)[Amount::titratable] * line.grams.mid > share * batch_acid;
}

bool holds_the_ph_down(const Formula& formula, std::size_t l, const Distance& distance, const Context& context) {
    constexpr double worth_weighing = 0.03;  // pH, of all of the line; judgement
    const auto& goals = distance.goals();
    const bool asked = std::any_of(goals.begin(), goals.end(), [](const Goal& goal) {
        return goal.property == Property::ph && goal.kind == Goal::Kind::at_least && goal.condition;
    });
    const Line& line = formula.lines[l];
    const Ingredient& food = *context.knowledge().ingredient(line.ingredient);
    const Role role = food.roles.front();
    if (!asked || food.meat || is_seasoning(role) || role == Role::salt || role == Role::heat || role == Role::green) return false;
    Material without = distance.base_material();
    without.add(context.nominal().unit(line), -line.grams.mid);
    const State state = context.nominal().models().state(without, context.nominal().process(formula.process));
    return state.properties[Property::ph] - distance.base().properties[Property::ph] > worth_weighing;
}

bool is_garlicky_leaf(const Formula& formula, std::size_t l, const Distance& distance, const Context& context) {
    const Line& line = formula.lines[l];
    const double taste = context.nominal().unit(line)[Amount::dose_allium] * line.grams.mid;
    return context.knowledge().ingredient(line.ingredient)->roles.front() == Role::green &&
           taste > context.constant("advice.moves.partner-share") * distance.base_material()[Amount::dose_allium];
}

}  // namespace standin
