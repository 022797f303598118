#include "adapt/rebalance.hpp"

#include <algorithm>
#include <cmath>

#include "adapt/descent.hpp"

namespace standin {
namespace {

constexpr double gain = 1e-4;       // squared noticeable differences that are not worth another step
constexpr double last_gain = 1e-9;  // the same for what will be shown
constexpr double alike = 0.01;      // of a breach

Solution solution_of(const Task& task, const Trial& point) {
    return {task.grams(point.y), point.cost(), point.price, point.violation(), {}};
}

}  // namespace

bool better(const Solution& a, const Solution& b) {
    if (a.feasible() != b.feasible()) return a.feasible();
    return a.feasible() ? a.cost < b.cost : a.violation < b.violation;
}

Solution Rebalancer::solve(const std::vector<Choice>& choices, const ProcessOption& process, const std::vector<double>& from,
                           const Terms& terms) const {
    const Task task = this->task(choices, process, terms);
    const std::vector<double> start = task.scaled(from);
    if (task.size() == 0) return solution_of(task, task.at(start));
    const Trial first = descend(task, start, gain, terms.enough);
    Solution best = solution_of(task, first);
    Basins basins = terms.basins;
    // What a descent from within a basin says of it. Given up at `enough` it says no more than that; where it left the basin, or found
    // no batch in it that keeps the limits, there is nothing in it.
    const auto learn = [&](bool side, const Trial& end) {
        const Solution found = solution_of(task, end);
        const bool stayed = found.feasible() && task.binder_used(end.y) == side;
        basins[side] = std::max(basins[side], stayed ? std::min(found.cost, terms.enough) : Terms{}.enough);
    };
    bool confirmed = false;  // that the limits cannot be kept: another start came to the same breach
    const auto from_there = [&](std::vector<double> y) {
        Trial end = descend(task, std::move(y), gain, terms.enough);
        const Solution found = solution_of(task, end);
        confirmed = !found.feasible() && std::abs(found.violation - best.violation) < alike * best.violation;
        if (better(found, best)) best = found;
        return end;
    };
    if (const auto side = task.binder_used(first.y)) {
        if (best.feasible()) learn(*side, first);
        if (!best.feasible() || basins[!*side] < std::min(best.cost, terms.enough)) learn(!*side, from_there(task.across(first.y)));
    }
    for (const double filled : {0.5, 0.95}) {
        if (best.feasible() || (confirmed && !terms.thorough)) break;
        std::vector<double> other(task.size());
        for (std::size_t i = 0; i < other.size(); ++i) other[i] = std::max(filled, task.least()[i]);
        from_there(std::move(other));
    }
    if (terms.thorough)
        for (auto& other : task.with_each_binder(task.scaled(from))) {
            if (best.feasible()) break;
            from_there(std::move(other));
        }
    best.basins = basins;
    return best;
}

Solution Rebalancer::polished(const std::vector<Choice>& choices, const ProcessOption& process, const Solution& found,
                              const Terms& terms) const {
    const Task task = this->task(choices, process, terms);
    if (task.size() == 0) return found;
    Solution best = found;
    const auto consider = [&](const Trial& end) {
        Solution other = solution_of(task, end);
        if (better(other, best)) best = std::move(other);
    };
    for (const double filled : {0.3, 0.7}) {
        std::vector<double> other(task.size());
        for (std::size_t i = 0; i < other.size(); ++i) other[i] = std::max(filled, task.least()[i]);
        consider(descend(task, std::move(other), gain, best.cost));
    }
    consider(descend(task, task.scaled(best.grams), last_gain, Terms{}.enough));
    return best;
}

Material Rebalancer::total(const std::vector<double>& grams) const {
    Material sum = problem_.start_total;
    for (std::size_t m = 0; m < grams.size(); ++m) sum.add(problem_.moves[m].per_gram, grams[m]);
    return sum;
}

}  // namespace standin
