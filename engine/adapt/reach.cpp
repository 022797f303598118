#include "adapt/reach.hpp"

#include <optional>

#include "adapt/explain.hpp"
#include "adapt/met.hpp"

namespace standin {
namespace {

// The batch that breaks `hard` the least, and among those that break nothing the nearest.
Plan nearest_to(const std::vector<Goal>& hard, const Problem& problem, const Rebalancer& rebalancer) {
    std::optional<Solution> best;
    std::size_t process = 0;
    for (std::size_t p = 0; p < problem.processes.size(); ++p) {
        const std::vector<Choice> open(problem.moves.size(), Choice::open);
        SolveOptions options;
        options.hard = &hard;
        options.multistart = true;
        const Solution found = rebalancer.solve(open, problem.processes[p], {}, options);
        if (best && !better(found, *best)) continue;
        best = found;
        process = p;
    }
    return {process, best->grams, best->cost, best->price};
}

}  // namespace

std::vector<std::string> reach_of_wants(const Problem& problem, const Distance& distance, const Models& middle, const Shown& shown,
                                        const PerProperty<Band>& start) {
    std::vector<std::string> all;
    if (problem.hard.empty() || problem.processes.empty()) return all;
    const Rebalancer rebalancer(problem, distance, middle);
    const Plan together = nearest_to(problem.hard, problem, rebalancer);
    for (std::size_t g = 0; g < problem.hard.size(); ++g) {
        const Goal& goal = distance.goals()[g];
        const double now = start[goal.property].mid;
        const double alone = shown(nearest_to({problem.hard[g]}, problem, rebalancer), goal);
        const double beside = shown(together, goal);
        const auto met = [&](double value) { return shortfall(goal, value, now) <= allowed(goal, distance); };
        const std::string unit(info(goal.property).unit);
        std::string says = goal.want + ": " + std::string(info(goal.property).name) + " is " + figures(now) + ", asked for " +
                           figures(goal.target(now)) + (unit.empty() ? "" : " " + unit) + "; by itself " +
                           (met(alone) ? "it can be met" : "it comes to " + figures(alone) + " at best");
        if (problem.hard.size() > 1) says += ", beside the rest " + (met(beside) ? std::string("too") : "it comes to " + figures(beside));
        all.push_back(says + ".");
    }
    return all;
}

}  // namespace standin
