#include "adapt/line_limits.hpp"

#include <algorithm>
#include <string>
#include <vector>

#include "core/names.hpp"
#include "knowledge/effects.hpp"

namespace standin {

double remnant_of(const Line& line, const Knowledge& knowledge) {
    constexpr double crumb_share = 0.08;  // of a line; judgement
    const double crumb = crumb_share * line.grams.mid;
    const Ingredient& food = *knowledge.ingredient(line.ingredient);
    if (food.roles.front() != Role::heat || food.tissue != Tissue::chile_flesh) return crumb;
    for (const auto& measure : food.measures)
        if (measure.measure == "piece") return std::max(crumb, std::min(measure.grams.mid, 0.5 * line.grams.mid));
    return crumb;
}

double most_water_out(const Line& line, const Distance& distance, double batch_grams) {
    constexpr double stays_in = 0.06;  // of the batch; judgement
    const auto& goals = distance.goals();
    const bool juicier = std::any_of(goals.begin(), goals.end(), [](const Goal& g) {
        return !g.condition && g.property == Property::cook_loss_pct && g.kind == Goal::Kind::at_most;
    });
    return juicier ? std::clamp(1 - stays_in * batch_grams / line.grams.mid, 0.0, 1.0) : 1;
}

bool is_pressed_beside(const Formula& formula, const Line& juice, const Knowledge& knowledge) {
    constexpr std::string_view pressed = " juice";
    std::vector<std::string> fruits;
    for (const auto& name : knowledge.ingredient(juice.ingredient)->names)
        if (const std::string folded = fold(name); folded.ends_with(pressed))
            fruits.push_back(" " + folded.substr(0, folded.size() - pressed.size()) + " ");
    return std::any_of(formula.lines.begin(), formula.lines.end(), [&](const Line& line) {
        const auto& names = knowledge.ingredient(line.ingredient)->names;
        return has_step(line.prepared, "squeezed") && std::any_of(names.begin(), names.end(), [&](const std::string& name) {
                   const std::string own = " " + fold(name) + " ";
                   return std::any_of(fruits.begin(), fruits.end(),
                                      [&](const auto& fruit) { return own.find(fruit) != std::string::npos; });
               });
    });
}

}  // namespace standin
