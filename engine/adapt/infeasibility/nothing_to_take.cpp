#include "adapt/infeasibility/nothing_to_take.hpp"

#include "adapt/distance/met.hpp"
#include "adapt/infeasibility/conflict.hpp"

namespace standin {

Nothing nothing_to_take(const Distance& distance, const Context& context) {
    Nothing nothing;
    for (const auto& goal : distance.goals()) {
        const double base = distance.base().properties[goal.property];
        const double floor = goal.property == Property::heat_mg_kg         ? context.constant("advice.floor.heat")
                             : goal.property == Property::sourness_mmol_kg ? context.constant("advice.floor.sourness")
                                                                           : 0.0;
        if (goal.condition || goal.kind != Goal::Kind::at_most) continue;
        // A step down from next to nothing would end below it.
        const bool below = !goal.times && goal.target(base) < 0;
        if (!goal.times && !below) continue;
        // Where the whole step asked for is less than what counts as met anyway, there is next to nothing to take away.
        if (!below && base > floor && shortfall(goal, base, base) > allowed(goal, distance)) continue;
        nothing.conflict.push_back(demand("want", goal.want));
        Reason give_up = make_reason(ReasonKind::nothing_to_taste, {}, {std::string(info(goal.property).name)});
        give_up.about = goal.want;
        nothing.would_give.push_back(std::move(give_up));
    }
    return nothing;
}

}  // namespace standin
