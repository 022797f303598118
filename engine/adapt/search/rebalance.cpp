#include "adapt/search/rebalance.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <utility>

#include "adapt/search/descent.hpp"

namespace standin {
namespace {

constexpr double gain = 1e-4;       // squared noticeable differences that are not worth another step
constexpr double last_gain = 1e-9;  // the same for what will be shown
constexpr double alike = 0.01;      // of a breach

Solution solution_of(const Subproblem& subproblem, const Iterate& point) {
    return {subproblem.grams(point.y), point.cost(), point.price, point.violation(), {}};
}

// Starts in the other basin: where a solution with fewer choices made found its best, if that is still in it; else what the first one did
// with none of the binders, or with plenty of each in turn. All of them at once would be one start, and a poor one.
std::vector<std::vector<double>> starts_across(const Subproblem& subproblem, const std::vector<double>& first,
                                               const std::vector<double>& known, bool with_binder) {
    if (!known.empty()) {
        std::vector<double> there = subproblem.scaled(known);
        if (subproblem.binder_used(there) == with_binder) return {std::move(there)};
    }
    if (with_binder) return subproblem.with_each_binder(first);
    return {subproblem.without_binder(first)};
}

double broken(const Iterate& point) {
    double sum = point.empty ? 1e6 : 0;
    for (const double violation : point.violations) sum += std::pow(std::max(0.0, violation), 2);
    return sum;
}

// From what is given, a lever at a time, each as far as it breaks the limits least: what one lever does by itself is found so, wherever the
// slopes lead. A little less of what sets a mass does nothing, and all of it out makes it loose.
std::vector<double> lever_by_lever(const Subproblem& subproblem, std::vector<double> y) {
    constexpr std::array fills{0.0, 0.3, 0.6, 1.0};
    constexpr int most_levers = 4;
    double least = broken(subproblem.at(y));
    for (int lever = 0; lever < most_levers && least > 0; ++lever) {
        std::optional<std::pair<std::size_t, double>> best;
        for (std::size_t i = 0; i < y.size(); ++i)
            for (const double fill : fills) {
                std::vector<double> other = y;
                other[i] = std::max(fill, subproblem.least()[i]);
                const double left = other[i] == y[i] ? least : broken(subproblem.at(std::move(other)));
                if (left >= least) continue;
                least = left;
                best = {i, std::max(fill, subproblem.least()[i])};
            }
        if (!best) break;
        y[best->first] = best->second;
    }
    return y;
}

}  // namespace

bool better(const Solution& a, const Solution& b) {
    if (a.feasible() != b.feasible()) return a.feasible();
    return a.feasible() ? a.cost < b.cost : a.violation < b.violation;
}

Solution Rebalancer::solve(const std::vector<Choice>& choices, const ProcessOption& process, const std::vector<double>& from,
                           const SolveOptions& options) const {
    const Subproblem subproblem = this->subproblem(choices, process, options);
    const std::vector<double> start = subproblem.scaled(from);
    if (subproblem.size() == 0) return solution_of(subproblem, subproblem.at(start));
    const Iterate first = descend(subproblem, start, gain, options.cutoff);
    Solution best = solution_of(subproblem, first);
    Basins basins = options.basins;
    // What descents from within a basin say of it. Given up at the cutoff they say no more than that; where all left the basin, or found
    // no batch in it that keeps the limits, there is nothing in it.
    const auto learn = [&](bool side, const std::vector<Iterate>& ends) {
        double least = SolveOptions{}.cutoff;
        for (const auto& end : ends) {
            const Solution found = solution_of(subproblem, end);
            if (!found.feasible() || subproblem.binder_used(end.y) != side || std::min(found.cost, options.cutoff) >= least) continue;
            least = std::min(found.cost, options.cutoff);
            basins.grams[side] = found.grams;
        }
        basins.least[side] = std::max(basins.least[side], least);
    };
    bool confirmed = false;  // that the limits cannot be kept: another start came to the same breach
    const auto from_there = [&](std::vector<double> y) {
        Iterate end = descend(subproblem, std::move(y), gain, options.cutoff);
        const Solution found = solution_of(subproblem, end);
        confirmed = !found.feasible() && std::abs(found.violation - best.violation) < alike * best.violation;
        if (better(found, best)) best = found;
        return end;
    };
    if (const auto side = subproblem.binder_used(first.y)) {
        if (best.feasible()) learn(*side, {first});
        if (!best.feasible() || basins.least[!*side] < std::min(best.cost, options.cutoff)) {
            std::vector<Iterate> ends;
            for (auto& y : starts_across(subproblem, first.y, options.basins.grams[!*side], !*side))
                ends.push_back(from_there(std::move(y)));
            learn(!*side, ends);
        }
    }
    for (const double filled : {0.5, 0.95}) {
        if (best.feasible() || (confirmed && !options.multistart)) break;
        std::vector<double> other(subproblem.size());
        for (std::size_t i = 0; i < other.size(); ++i) other[i] = std::max(filled, subproblem.least()[i]);
        from_there(std::move(other));
    }
    if (options.multistart && !best.feasible()) {
        from_there(lever_by_lever(subproblem, subproblem.scaled({})));
        if (!best.feasible()) from_there(lever_by_lever(subproblem, subproblem.scaled(best.grams)));
    }
    if (options.multistart)
        for (auto& other : subproblem.with_each_binder(subproblem.scaled(from))) {
            if (best.feasible()) break;
            from_there(std::move(other));
        }
    best.basins = basins;
    return best;
}

Solution Rebalancer::polished(const std::vector<Choice>& choices, const ProcessOption& process, const Solution& found,
                              const SolveOptions& options) const {
    const Subproblem subproblem = this->subproblem(choices, process, options);
    if (subproblem.size() == 0) return found;
    Solution best = found;
    const auto consider = [&](const Iterate& end) {
        Solution other = solution_of(subproblem, end);
        if (better(other, best)) best = std::move(other);
    };
    for (const double filled : {0.3, 0.7}) {
        std::vector<double> other(subproblem.size());
        for (std::size_t i = 0; i < other.size(); ++i) other[i] = std::max(filled, subproblem.least()[i]);
        consider(descend(subproblem, std::move(other), gain, best.cost));
    }
    for (const bool by_move : {false, true})
        consider(descend(subproblem, subproblem.scaled(best.grams), last_gain, SolveOptions{}.cutoff, by_move));
    return best;
}

Material Rebalancer::total(const std::vector<double>& grams) const {
    Material sum = problem_.start_total;
    for (std::size_t m = 0; m < grams.size(); ++m) sum.add(problem_.moves[m].per_gram, grams[m]);
    return sum;
}

}  // namespace standin
