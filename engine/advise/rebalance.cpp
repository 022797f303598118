#include "advise/rebalance.hpp"

#include <nlopt.h>

#include <algorithm>
#include <cmath>
#include <memory>

#include "advise/descent.hpp"

namespace standin {
namespace {

constexpr double gain = 5e-5;       // noticeable differences that are not worth another step
constexpr double last_gain = 1e-9;  // the same for what will be shown
constexpr double smooth = 1e-4;     // keeps the length of the rows differentiable at nothing
constexpr double tolerance = 1e-9;  // on limits, in their own scale
constexpr int most_evaluations = 200;

Solution solution_of(const Task& task, const Trial& point) {
    return {task.grams(point.y), point.distance(), point.deviation, point.violation()};
}

// NLopt asks for the objective and each limit by itself; one evaluation serves them all.
struct Callback {
    const Task* task;
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
    const double length = std::sqrt(c.point.deviation * c.point.deviation + smooth * smooth);
    for (unsigned i = 0; gradient && i < n; ++i) {
        gradient[i] = c.task->prices()[i];
        for (std::size_t r = 0; r < c.rows.rows(); ++r) gradient[i] += c.rows[r][i] * c.point.rows[r] / length;
    }
    return length - smooth + c.point.price;
}

double evaluate_limit(unsigned n, const double* y, double* gradient, void* data) {
    const auto& row = *static_cast<Row*>(data);
    row.callback->refresh(n, y);
    if (gradient) std::copy_n(row.callback->breaches[row.limit], n, gradient);
    return row.callback->point.breaches[row.limit];
}

std::vector<double> slsqp(const Task& task, std::vector<double> y) {
    const auto n = static_cast<unsigned>(task.size());
    const std::unique_ptr<nlopt_opt_s, decltype(&nlopt_destroy)> solver(nlopt_create(NLOPT_LD_SLSQP, n), &nlopt_destroy);
    Callback callback{&task, {}, {}, {}};
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
    Trial first = descend(task, start, gain, terms.enough);
    const auto other_side = task.across(first.y);
    Solution best = solution_of(task, first);
    const auto try_from = [&](std::vector<double> y) {
        const double enough = best.feasible() ? std::min(terms.enough, best.distance) : terms.enough;
        const Solution found = solution_of(task, descend(task, std::move(y), gain, enough));
        if (better(found, best)) best = found;
    };
    if (other_side) try_from(*other_side);
    for (const double filled : {0.5, 0.95}) {
        if (best.feasible()) break;
        std::vector<double> other(task.size());
        for (std::size_t i = 0; i < other.size(); ++i) other[i] = std::max(filled, task.least()[i]);
        try_from(std::move(other));
    }
    return best;
}

Solution Rebalancer::second_opinion(const std::vector<Choice>& choices, const ProcessOption& process, const Solution& found,
                                    const Terms& terms) const {
    const Task task = this->task(choices, process, terms);
    if (task.size() == 0) return found;
    Solution best = found;
    for (const auto& y : {descend(task, task.scaled(best.grams), last_gain, Terms{}.enough).y, slsqp(task, task.scaled(best.grams))}) {
        const Solution other = solution_of(task, task.at(y));
        if (better(other, best)) best = other;
    }
    return best;
}

Material Rebalancer::total(const std::vector<double>& grams) const {
    Material sum = problem_.start_total;
    for (std::size_t m = 0; m < grams.size(); ++m) sum.add(problem_.moves[m].per_gram, grams[m]);
    return sum;
}

}  // namespace standin
