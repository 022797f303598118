#include "adapt/line_limits.hpp"

#include <algorithm>

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

double share_for_lost_acid(const Ingredient& food, const Material& unit, double grams, double lost_acid) {
    const double acid = unit[Amount::titratable] * grams;
    return food.tissue == Tissue::liquid && food.roles.front() == Role::acid && acid > 0 ? lost_acid / acid : 0;
}

bool near_kin(const Move& move) {
    constexpr double near = 0.8;  // of a swap; judgement
    return move.stands_for.front().closeness >= near;
}

}  // namespace standin
