#include "adapt/infeasibility/reach.hpp"

#include <optional>

#include "adapt/distance/met.hpp"

namespace standin {
namespace {

// As far as it goes, however much is asked: else what can be reached would hang on the question.
Goal as_far_as_it_goes(Goal goal) {
    constexpr double beyond = 1e4;  // of any property, in its own unit
    if (goal.kind == Goal::Kind::at_least) goal.limit = beyond;
    if (goal.kind == Goal::Kind::at_most) goal.limit = -beyond;
    return goal;
}

// The value from which a want is told as met, as at every variant.
double counts_as_met(const Goal& goal, const Distance& distance, double now) {
    const double slack = goal.condition ? 0 : allowed(goal, distance), target = goal.target(now);
    return goal.kind == Goal::Kind::at_least ? target - slack : goal.kind == Goal::Kind::at_most ? target + slack : target;
}

// The number that stands beside the want at the variant.
double as_shown(const Variant& nearest, std::size_t g, const Goal& goal) {
    if (g < nearest.wants.size() && !nearest.wants[g].reason.figures.empty()) return nearest.wants[g].reason.figures.front().after;
    return nearest.prediction.properties[goal.property].mid;
}

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

std::vector<Reason> reach_of_wants(const Problem& problem, const Distance& distance, const Models& middle, const Shown& shown,
                                   const PerProperty<Band>& start, const Variant* nearest) {
    std::vector<Reason> all;
    if (problem.hard.empty() || problem.processes.empty()) return all;
    const Rebalancer rebalancer(problem, distance, middle);
    const Plan together = nearest_to(problem.hard, problem, rebalancer);
    for (std::size_t g = 0; g < problem.hard.size(); ++g) {
        const Goal& goal = distance.goals()[g];
        const double now = start[goal.property].mid;
        const double alone = shown(nearest_to({as_far_as_it_goes(problem.hard[g])}, problem, rebalancer), goal);
        const double beside = nearest ? as_shown(*nearest, g, goal) : shown(together, goal);
        const auto met = [&](double value) { return shortfall(goal, value, now) <= allowed(goal, distance); };
        const std::string unit(info(goal.property).unit);
        Reason near = make_reason(ReasonKind::within_reach, {{std::string(info(goal.property).name), {}, now, unit},
                                                             {"asked for", {}, counts_as_met(goal, distance, now), unit},
                                                             {"alone", {}, alone, unit}});
        near.about = goal.want;
        if (met(alone)) near.role = "alone";
        const bool one_word = std::all_of(problem.hard.begin(), problem.hard.end(), [&](const Goal& g) { return g.want == goal.want; });
        if (one_word) near.note = "of one want";
        if (problem.hard.size() > 1) {
            near.figures.push_back({"beside", {}, beside, unit});
            if (met(beside)) near.role += near.role.empty() ? "beside" : ", beside";
        }
        if (nearest) {
            near.figures.push_back({"nearest", {}, beside, unit});
            if (g < nearest->wants.size() && nearest->wants[g].met) near.role += near.role.empty() ? "nearest" : ", nearest";
        }
        all.push_back(std::move(near));
    }
    return all;
}

}  // namespace standin
