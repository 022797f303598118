#include <algorithm>

#include "adapt/goals/request.hpp"
#include "adapt/goals/wants.hpp"
#include "adapt/moves/problem.hpp"

namespace standin {

std::vector<Goal> hard_goals(const Distance& distance) {
    std::vector<Goal> hard;
    for (const auto& goal : distance.goals())
        hard.push_back(as_condition(goal, distance.base().properties[goal.property], aimed_within * distance.step(goal.property)));
    return hard;
}

std::optional<std::vector<Goal>> well_within(const std::vector<Goal>& hard) {
    constexpr double off = 0.25;  // of the way between; judgement
    std::optional<std::vector<Goal>> within;
    for (std::size_t low = 0; low < hard.size(); ++low)
        for (std::size_t high = 0; high < hard.size(); ++high) {
            const Goal &least = hard[low], &most = hard[high];
            const bool both = least.kind == Goal::Kind::at_least && most.kind == Goal::Kind::at_most && least.property == most.property;
            if (!both || !(least.limit < most.limit)) continue;
            if (!within) within = hard;
            const double way = most.limit - least.limit;
            (*within)[low].limit = std::max((*within)[low].limit, least.limit + off * way);
            (*within)[high].limit = std::min((*within)[high].limit, most.limit - off * way);
        }
    return within;
}

}  // namespace standin
