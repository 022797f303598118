#include "advise/rebalance.hpp"

#include <nlopt.h>

#include <algorithm>
#include <cmath>
#include <memory>

namespace standin {
namespace {

constexpr double step = 1e-6;       // of a scaled variable, for forward differences
constexpr double smooth = 1e-4;     // keeps the root of a sum of squares differentiable at nothing
constexpr double tolerance = 1e-6;  // on constraints, in their own scale
constexpr double least_mass = 1.0;  // g; a batch that moves away altogether is no batch

// Each method's own end: CCSA creeps, so it is left sooner; what it gains goes back to SLSQP.
struct Ending {
    int evaluations;
    double gain;  // of the objective
};
constexpr Ending ending(nlopt_algorithm algorithm) { return algorithm == NLOPT_LD_CCSAQ ? Ending{120, 1e-4} : Ending{400, 1e-5}; }

// The values SLSQP asks for: the objective first, then one a constraint (feasible when not positive).
using Values = std::vector<double>;

class Task {
public:
    Task(const Problem& problem, const Yardstick& yardstick, const Models& models, const ProcessOption& process,
         const std::vector<Choice>& choices)
        : problem_(problem), yardstick_(yardstick), models_(models), process_(process) {
        for (std::size_t m = 0; m < choices.size(); ++m) {
            if (choices[m] == Choice::out || !(problem.moves[m].most > 0)) continue;
            active_.push_back(m);
            open_price_.push_back(choices[m] == Choice::open ? problem.moves[m].price : 0);
            if (choices[m] != Choice::open) fixed_price_ += problem.moves[m].price;
            least_.push_back(choices[m] == Choice::full ? 1.0 : 0.0);
        }
        const bool meat_moves =
            std::any_of(active_.begin(), active_.end(), [&](std::size_t m) { return problem.moves[m].per_gram[Amount::meat] != 0; });
        meat_limit_ = meat_moves || problem.start_total[Amount::meat] < problem.least_meat;
    }

    std::size_t size() const { return active_.size(); }
    std::size_t constraints() const { return problem_.hard.size() + (meat_limit_ ? 1 : 0) + problem_.limits.size(); }
    /// Lower bounds of the scaled variables; the upper bounds are 1.
    const std::vector<double>& least() const { return least_; }

    std::vector<double> grams(const double* y) const {
        std::vector<double> all(problem_.moves.size(), 0.0);
        for (std::size_t i = 0; i < active_.size(); ++i)
            all[active_[i]] = std::clamp(y[i], least_[i], 1.0) * problem_.moves[active_[i]].most;
        return all;
    }
    std::vector<double> scaled(const std::vector<double>& grams) const {
        std::vector<double> y = least_;
        for (std::size_t i = 0; i < active_.size() && !grams.empty(); ++i)
            y[i] = std::clamp(grams[active_[i]] / problem_.moves[active_[i]].most, least_[i], 1.0);
        return y;
    }

    Values values(const double* y) const { return values_of(total(y), y); }

    // Values and, a row each, their derivatives by every variable.
    void differentiate(const double* y, Values& at, std::vector<Values>& slopes) const {
        const Material here = total(y);
        at = values_of(here, y);
        slopes.assign(size(), {});
        std::vector<double> moved(y, y + size());
        for (std::size_t i = 0; i < size(); ++i) {
            Material there = here;
            there.add(problem_.moves[active_[i]].per_gram, step * problem_.moves[active_[i]].most);
            moved[i] = y[i] + step;
            Values next = values_of(there, moved.data());
            moved[i] = y[i];
            for (std::size_t v = 0; v < next.size(); ++v) next[v] = (next[v] - at[v]) / step;
            slopes[i] = std::move(next);
        }
    }

private:
    Material total(const double* y) const {
        Material sum = problem_.start_total;
        for (std::size_t i = 0; i < active_.size(); ++i)
            sum.add(problem_.moves[active_[i]].per_gram, y[i] * problem_.moves[active_[i]].most);
        return sum;
    }

    Values values_of(const Material& batch, const double* y) const {
        Values all;
        all.reserve(1 + constraints());
        if (batch[Amount::mass] < least_mass) return Values(1 + constraints(), 1e3);
        const State state = models_.state(batch, process_.state, 0);
        const double deviation = yardstick_.distance(batch, state);
        double price = fixed_price_;
        for (std::size_t i = 0; i < active_.size(); ++i) price += open_price_[i] * y[i];
        all.push_back(std::sqrt(deviation * deviation + smooth * smooth) - smooth + price);
        for (const Goal& goal : problem_.hard) all.push_back(breach(goal, state));
        if (meat_limit_) all.push_back(1 - batch[Amount::meat] / problem_.least_meat);
        for (const auto& limit : problem_.limits) all.push_back(over(limit, y));
        return all;
    }

    double breach(const Goal& goal, const State& state) const {
        const double past = (state.properties[goal.property] - goal.limit) / yardstick_.unit(goal.property);
        if (goal.kind == Goal::Kind::at_most) return past;
        if (goal.kind == Goal::Kind::at_least) return -past;
        return std::abs(past) - equal_within;
    }

    double over(const Limit& limit, const double* y) const {
        double sum = 0;
        for (std::size_t i = 0; i < active_.size(); ++i)
            if (std::find(limit.moves.begin(), limit.moves.end(), active_[i]) != limit.moves.end())
                sum += y[i] * problem_.moves[active_[i]].most;
        return limit.grams > 0 ? sum / limit.grams - 1 : sum;
    }

    static constexpr double equal_within = 0.1;  // noticeable differences

    const Problem& problem_;
    const Yardstick& yardstick_;
    const Models& models_;
    const ProcessOption& process_;
    std::vector<std::size_t> active_;
    std::vector<double> open_price_, least_;
    double fixed_price_ = 0;
    bool meat_limit_ = false;
};

// NLopt asks for the objective and each constraint by itself; one evaluation serves them all.
struct Callback {
    const Task* task;
    std::vector<double> at;
    Values values;
    std::vector<Values> slopes;

    void refresh(unsigned n, const double* y) {
        if (at.size() == n && !at.empty() && std::equal(at.begin(), at.end(), y)) return;
        at.assign(y, y + n);
        task->differentiate(y, values, slopes);
    }
};

struct Row {
    Callback* callback;
    std::size_t index;
};

double evaluate(unsigned n, const double* y, double* gradient, void* data) {
    const auto* row = static_cast<Row*>(data);
    row->callback->refresh(n, y);
    if (gradient)
        for (unsigned i = 0; i < n; ++i) gradient[i] = row->callback->slopes[i][row->index];
    return row->callback->values[row->index];
}

std::vector<double> minimise(const Task& task, std::vector<double> y, nlopt_algorithm algorithm) {
    const auto n = static_cast<unsigned>(task.size());
    const std::unique_ptr<nlopt_opt_s, decltype(&nlopt_destroy)> solver(nlopt_create(algorithm, n), &nlopt_destroy);
    Callback callback{&task, {}, {}, {}};
    std::vector<Row> rows;
    for (std::size_t r = 0; r <= task.constraints(); ++r) rows.push_back({&callback, r});
    nlopt_set_lower_bounds(solver.get(), task.least().data());
    nlopt_set_upper_bounds1(solver.get(), 1.0);
    nlopt_set_min_objective(solver.get(), evaluate, &rows[0]);
    for (std::size_t r = 1; r < rows.size(); ++r) nlopt_add_inequality_constraint(solver.get(), evaluate, &rows[r], tolerance);
    nlopt_set_ftol_abs(solver.get(), ending(algorithm).gain);
    nlopt_set_maxeval(solver.get(), ending(algorithm).evaluations);
    double least = 0;
    nlopt_optimize(solver.get(), y.data(), &least);  // its verdict is not used: the caller recomputes
    for (std::size_t i = 0; i < y.size(); ++i) y[i] = std::isfinite(y[i]) ? std::clamp(y[i], task.least()[i], 1.0) : task.least()[i];
    return y;
}

double violation(const Values& values) {
    double worst = 0;
    for (std::size_t v = 1; v < values.size(); ++v) worst = std::max(worst, values[v]);
    return worst;
}

// SLSQP may stop well short of a minimum and call it success. CCSA (Svanberg 2002, SIAM J Optim 12:555), a method of another kind, goes
// on where it stopped, and the two take turns until one gains nothing over the other.
template <class Take>
void descend(const Task& task, const std::vector<double>& start, Take take, const Solution& best) {
    constexpr int most_restarts = 6;
    constexpr double gain = 1e-4;
    take(minimise(task, start, NLOPT_LD_SLSQP));
    for (int again = 0; again < most_restarts; ++again) {
        const double before = best.distance;
        const bool was_feasible = best.feasible();
        take(minimise(task, task.scaled(best.grams), again % 2 == 0 ? NLOPT_LD_CCSAQ : NLOPT_LD_SLSQP));
        if (was_feasible && best.distance > before - gain) break;
        if (!best.feasible() && again > 0) break;
    }
}

}  // namespace

Solution Rebalancer::solve(const std::vector<Choice>& choices, const ProcessOption& process, const std::vector<double>& from) const {
    const Task task(problem_, yardstick_, models_, process, choices);
    Solution best;
    bool first = true;
    const auto take = [&](const std::vector<double>& y) {
        const Values values = task.values(y.data());
        Solution found{task.grams(y.data()), values[0], 0, violation(values)};
        const bool better = found.feasible() == best.feasible()
                                ? (found.feasible() ? found.distance < best.distance : found.violation < best.violation)
                                : found.feasible();
        if (first || better) best = std::move(found);
        first = false;
    };
    const std::vector<double> start = task.scaled(from);
    take(start);
    if (task.size() > 0) {
        descend(task, start, take, best);
        for (const double filled : {0.5, 0.95}) {
            if (best.feasible()) break;
            std::vector<double> other(task.size(), filled);
            for (std::size_t i = 0; i < other.size(); ++i) other[i] = std::max(other[i], task.least()[i]);
            descend(task, other, take, best);
        }
    }
    const Material batch = total(best.grams);
    best.deviation = yardstick_.distance(batch, state(batch, process));
    return best;
}

Material Rebalancer::total(const std::vector<double>& grams) const {
    Material sum = problem_.start_total;
    for (std::size_t m = 0; m < grams.size(); ++m) sum.add(problem_.moves[m].per_gram, grams[m]);
    return sum;
}

}  // namespace standin
