#include "adapt/problem.hpp"
#include "adapt/request.hpp"
#include "adapt/wants.hpp"

namespace standin {

std::vector<Goal> hard_goals(const Distance& distance) {
    std::vector<Goal> hard;
    for (const auto& goal : distance.goals())
        hard.push_back(as_condition(goal, distance.base().properties[goal.property], aimed_within * distance.step(goal.property)));
    return hard;
}

}  // namespace standin
