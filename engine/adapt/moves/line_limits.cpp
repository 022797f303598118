#include "adapt/moves/line_limits.hpp"

#include <algorithm>

#include "knowledge/records/tissue.hpp"

namespace standin {

double remnant_of(const Line& line, double heat_mg_g, double batch_grams, const Knowledge& knowledge) {
    const double of_meat = knowledge.parameter("advice.remnant.crumb-of-meat").mid;
    const double of_the_rest = knowledge.parameter("advice.remnant.crumb").mid;
    const double tasted = knowledge.parameter("advice.remnant.tasted").mid;
    const double part_of_a_pod = knowledge.parameter("advice.remnant.part-of-a-pod").mid;
    const Ingredient& food = *knowledge.ingredient(line.ingredient);
    const double crumb = (food.meat ? of_meat : of_the_rest) * line.grams.mid;
    if (food.roles.front() != Role::heat || food.tissue != Tissue::chile_flesh) return crumb;
    for (const auto& measure : food.measures)
        if (measure.measure == "piece") {
            if (1000 * heat_mg_g * measure.grams.mid > tasted * batch_grams) return std::min(crumb, part_of_a_pod * measure.grams.mid);
            return std::max(crumb, std::min(measure.grams.mid, 0.5 * line.grams.mid));
        }
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

bool handful_of_herb(const Ingredient& food, double share) {
    constexpr double handful = 0.06;  // judgement
    return share < handful && std::find(food.roles.begin(), food.roles.end(), Role::herb) != food.roles.end();
}

double share_for_lost_acid(const Ingredient& food, const Material& unit, double grams, double lost_acid) {
    const double acid = unit[Amount::titratable] * grams;
    return food.tissue == Tissue::liquid && food.roles.front() == Role::acid && acid > 0 ? lost_acid / acid : 0;
}

bool sets(const Ingredient& food) { return is_dry_binder(food) || food.tissue == Tissue::egg; }

void take_less_where_less_is_asked(Problem& problem, const Distance& distance) {
    constexpr double of_that = 0.75;  // the least of what would bring what is asked for; judgement
    for (const auto& goal : distance.goals()) {
        const double base = distance.base().properties[goal.property];
        const bool heat = goal.property == Property::heat_mg_kg, sour = goal.property == Property::sourness_mmol_kg;
        if (goal.kind != Goal::Kind::at_most || !(heat || sour) || !distance.wanted(goal.property) || !(base > 0)) continue;
        const double asked = of_that * std::clamp(goal.target(base) / base, 0.0, 1.0);
        for (auto& move : problem.moves)
            if (move.kind == MoveKind::stand_in && problem.missing[move.line] && move.role == (heat ? Role::heat : Role::acid))
                move.least *= asked;
    }
}

bool near_kin(const Move& move) {
    constexpr double near = 0.8;  // of a swap; judgement
    return move.stands_for.front().closeness >= near;
}

}  // namespace standin
