#include "adapt/variants/alternatives.hpp"

#include <algorithm>
#include <cmath>

namespace standin {
namespace {

constexpr double much_further = 0.5;  // noticeable differences; judgement
constexpr double few_times = 3;       // of one flour as of the other: beyond that the batch does without either; judgement
constexpr std::size_t most_for_one = 2;

// A pinch of one flour in place of a handful of another says that neither is needed, not that they are equal.
bool weighs_alike(const Move& move, double grams, double other) {
    return move.role != Role::binder || (other * few_times >= grams && other <= few_times * grams);
}

}  // namespace

std::vector<Alternative> alternatives_to(const Plan& plan, const Problem& problem, const Rebalancer& rebalancer) {
    std::vector<Alternative> all;
    const auto used = used_moves(problem, plan.grams);
    const ProcessOption& process = problem.processes[plan.process];
    for (const auto m : used) {
        std::vector<Alternative> found;
        for (const auto equivalent : problem.moves[m].equivalents) {
            // The same food prepared in another way, or one that comes in already, is nothing to choose from.
            const bool there = std::any_of(used.begin(), used.end(), [&](std::size_t u) {
                return problem.moves[u].food.ingredient == problem.moves[equivalent].food.ingredient;
            });
            if (there || !(problem.moves[equivalent].most > 0)) continue;
            std::vector<Choice> choices(problem.moves.size(), Choice::out);
            std::vector<double> from = plan.grams;
            for (const auto u : used) choices[u == m ? equivalent : u] = Choice::in;
            from[equivalent] = from[m];
            const Solution solved = rebalancer.solve(choices, process, from);
            const double distance = std::sqrt(solved.cost + process.price);
            const bool used_at_all = solved.grams[equivalent] > 0.01 * problem.moves[equivalent].most &&
                                     weighs_alike(problem.moves[m], plan.grams[m], solved.grams[equivalent]);
            if (solved.feasible() && used_at_all && distance <= plan.distance() + much_further)
                found.push_back({m, equivalent, solved.grams[equivalent], distance});
        }
        std::stable_sort(found.begin(), found.end(), [](const Alternative& a, const Alternative& b) { return a.distance < b.distance; });
        found.resize(std::min(found.size(), most_for_one));
        all.insert(all.end(), found.begin(), found.end());
    }
    return all;
}

}  // namespace standin
