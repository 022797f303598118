#include "adapt/rebalance.hpp"

#include <nlopt.h>

#include <algorithm>
#include <cmath>
#include <memory>

#include "adapt/descent.hpp"

namespace standin {
namespace {

constexpr double gain = 5e-5;              // noticeable differences that are not worth another step
constexpr double last_gain = 1e-9;         // the same for what will be shown
constexpr double smooth[] = {1e-4, 1e-7};  // keeps the length of the rows differentiable at nothing; from coarse to fine
constexpr double tolerance = 1e-9;         // on limits, in their own scale
constexpr double alike = 0.01;             // of a breach
constexpr int most_evaluations = 200;

Solution solution_of(const Task& task, const Trial& point) {
    return {task.grams(point.y), point.distance(), point.deviation, point.violation(), {}};
}

// NLopt asks for the objective and each limit by itself; one evaluation serves them all.
struct Callback {
    const Task* task;
    double smooth;
    Trial point;
    Matrix rows, breaches;

    void refresh(unsigned n, const double* y) {
        if (point.y.size() == n && std::equal(point.y.begin(), point.y.end(), y)) return;
        point = task->at({y, y + n});
        task->slopes(point, rows, breaches);
    }
};

struct Row {
    Callback* callback;
    std::size_t limit;
};

double evaluate_distance(unsigned n, const double* y, double* gradient, void* data) {
    auto& c = *static_cast<Callback*>(data);
    c.refresh(n, y);
    const double length = std::sqrt(c.point.deviation * c.point.deviation + c.smooth * c.smooth);
    for (unsigned i = 0; gradient && i < n; ++i) {
        gradient[i] = c.task->prices()[i];
        for (std::size_t r = 0; r < c.rows.rows(); ++r) gradient[i] += c.rows[r][i] * c.point.rows[r] / length;
    }
    return length - c.smooth + c.point.price;
}

double evaluate_limit(unsigned n, const double* y, double* gradient, void* data) {
    const auto& row = *static_cast<Row*>(data);
    row.callback->refresh(n, y);
    if (gradient) std::copy_n(row.callback->breaches[row.limit], n, gradient);
    return row.callback->point.breaches[row.limit];
}

std::vector<double> slsqp(const Task& task, std::vector<double> y, double smooth) {
    const auto n = static_cast<unsigned>(task.size());
    const std::unique_ptr<nlopt_opt_s, decltype(&nlopt_destroy)> solver(nlopt_create(NLOPT_LD_SLSQP, n), &nlopt_destroy);
    Callback callback{&task, smooth, {}, {}, {}};
    std::vector<Row> rows;
    for (std::size_t r = 0; r < task.limits(); ++r) rows.push_back({&callback, r});
    nlopt_set_lower_bounds(solver.get(), task.least().data());
    nlopt_set_upper_bounds1(solver.get(), 1.0);
    nlopt_set_min_objective(solver.get(), evaluate_distance, &callback);
    for (auto& row : rows) nlopt_add_inequality_constraint(solver.get(), evaluate_limit, &row, tolerance);
    nlopt_set_ftol_abs(solver.get(), last_gain);
    nlopt_set_maxeval(solver.get(), most_evaluations);
    double least = 0;
    nlopt_optimize(solver.get(), y.data(), &least);  // its verdict is not used: the caller recomputes
    for (std::size_t i = 0; i < y.size(); ++i) y[i] = std::isfinite(y[i]) ? std::clamp(y[i], task.least()[i], 1.0) : task.least()[i];
    return y;
}

}  // namespace

bool better(const Solution& a, const Solution& b) {
    if (a.feasible() != b.feasible()) return a.feasible();
    return a.feasible() ? a.distance < b.distance : a.violation < b.violation;
}

Solution Rebalancer::solve(const std::vector<Choice>& choices, const ProcessOption& process, const std::vector<double>& from,
                           const Terms& terms) const {
    const Task task = this->task(choices, process, terms);
    const std::vector<double> start = task.scaled(from);
    if (task.size() == 0) return solution_of(task, task.at(start));
    const Trial first = descend(task, start, gain, terms.enough);
    Solution best = solution_of(task, first);
    Valleys valleys = terms.valleys;
    // What a descent from within a valley says of it. Given up at `enough` it says no more than that; where it left the valley, or found
    // no batch in it that keeps the limits, there is nothing in it.
    const auto learn = [&](bool side, const Trial& end) {
        const Solution found = solution_of(task, end);
        const bool stayed = found.feasible() && task.binder_used(end.y) == side;
        valleys[side] = std::max(valleys[side], stayed ? std::min(found.distance, terms.enough) : Terms{}.enough);
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
        if (!best.feasible() || valleys[!*side] < std::min(best.distance, terms.enough)) learn(!*side, from_there(task.across(first.y)));
    }
    for (const double filled : {0.5, 0.95}) {
        if (best.feasible() || confirmed) break;
        std::vector<double> other(task.size());
        for (std::size_t i = 0; i < other.size(); ++i) other[i] = std::max(filled, task.least()[i]);
        from_there(std::move(other));
    }
    best.valleys = valleys;
    return best;
}

Solution Rebalancer::second_opinion(const std::vector<Choice>& choices, const ProcessOption& process, const Solution& found,
                                    const Terms& terms) const {
    const Task task = this->task(choices, process, terms);
    if (task.size() == 0) return found;
    Solution best = found;
    const auto hear = [&](const std::vector<double>& y) {
        const Solution other = solution_of(task, task.at(y));
        if (better(other, best)) best = other;
    };
    for (const double filled : {0.3, 0.7}) {
        std::vector<double> other(task.size());
        for (std::size_t i = 0; i < other.size(); ++i) other[i] = std::max(filled, task.least()[i]);
        hear(descend(task, std::move(other), gain, best.distance).y);
    }
    hear(descend(task, task.scaled(best.grams), last_gain, Terms{}.enough).y);
    for (const double how : smooth) hear(slsqp(task, task.scaled(best.grams), how));
    return best;
}

Material Rebalancer::total(const std::vector<double>& grams) const {
    Material sum = problem_.start_total;
    for (std::size_t m = 0; m < grams.size(); ++m) sum.add(problem_.moves[m].per_gram, grams[m]);
    return sum;
}

}  // namespace standin
