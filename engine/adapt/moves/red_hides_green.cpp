#include "adapt/moves/red_hides_green.hpp"

#include "substitute/dose.hpp"

namespace standin {

bool hides_green(const Formula& formula, std::size_t line, const Distance& distance, const Context& context) {
    constexpr double clearly = 0.3;  // noticeable differences of colour; judgement
    const Line& red = formula.lines[line];
    const Role role = context.knowledge().ingredient(red.ingredient)->roles.front();
    const bool asked = any_asks(distance.goals(), Property::greenness, Goal::Kind::at_least);
    if (!asked || (role != Role::heat && role != Role::spice)) return false;
    Material less = distance.base_material();
    less.add(context.nominal().unit(red), -red.grams.mid / 2);
    const State state = context.nominal().models().state(less, context.nominal().process(formula.process));
    const double rise = state.properties[Property::greenness] - distance.base().properties[Property::greenness];
    return rise > clearly * distance.unit(Property::greenness);
}

bool brings_green(const Ingredient& food, const Context& context) {
    Line plain;
    plain.ingredient = food.id;
    return dose_of(context.nominal().unit(plain), Role::green) > 0;
}

}  // namespace standin
