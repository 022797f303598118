#include "adapt/task.hpp"

#include <algorithm>
#include <cmath>

namespace standin {
namespace {

constexpr double step = 1e-6;         // of the most a sum can move, for forward differences
constexpr double least_mass = 1.0;    // g; a batch that moves away altogether is no batch
constexpr double no_batch = 1e3;      // what is said of it
constexpr double equal_within = 0.1;  // noticeable differences

// Amounts and notes alike by number, as they stand in a material.
Amount sum_at(std::size_t i) { return static_cast<Amount>(i); }

// Whether the models run on this sum; aroma and the doses are read off by the yardstick alone.
bool moves_state(std::size_t sum) {
    const auto dose = [&](Amount a) { return sum == static_cast<std::size_t>(a); };
    return sum < aroma_offset && !dose(Amount::dose_nut) && !dose(Amount::dose_herb) && !dose(Amount::dose_allium) &&
           !dose(Amount::dose_spice);
}

double length(const std::vector<double>& v) {
    double sum = 0;
    for (const double x : v) sum += x * x;
    return std::sqrt(sum);
}

}  // namespace

double Trial::violation() const {
    double worst = empty ? no_batch : 0;
    for (const double breach : breaches) worst = std::max(worst, breach);
    return worst;
}

Task::Task(const Problem& problem, const std::vector<Goal>& hard, const Yardstick& yardstick, const Models& middle,
           const ProcessOption& process, const std::vector<Choice>& choices)
    : problem_(problem), hard_(hard), yardstick_(yardstick), models_(middle), process_(process) {
    for (std::size_t m = 0; m < choices.size(); ++m) {
        if (choices[m] == Choice::out || !(problem.moves[m].most > 0)) continue;
        active_.push_back(m);
        open_price_.push_back(choices[m] == Choice::open ? problem.moves[m].price : 0);
        if (choices[m] != Choice::open) fixed_price_ += problem.moves[m].price;
        least_.push_back(choices[m] == Choice::full ? 1.0 : 0.0);
    }
    const auto whole = [&](std::size_t i, std::size_t sum) {
        return problem.moves[active_[i]].per_gram[sum_at(sum)] * problem.moves[active_[i]].most;
    };
    for (std::size_t sum = 0; sum < material_size; ++sum) {
        double reach = 0;
        for (std::size_t i = 0; i < size(); ++i) reach = std::max(reach, std::abs(whole(i, sum)));
        if (!(reach > 0)) continue;
        moving_.push_back(sum);
        reach_.push_back(reach);
    }
    by_move_ = Matrix(moving_.size(), size());
    for (std::size_t s = 0; s < moving_.size(); ++s)
        for (std::size_t i = 0; i < size(); ++i) by_move_[s][i] = whole(i, moving_[s]);
    meat_limit_ = std::find(moving_.begin(), moving_.end(), static_cast<std::size_t>(Amount::meat)) != moving_.end() ||
                  problem.start_total[Amount::meat] < problem.least_meat;
    by_limit_ = Matrix(problem.limits.size(), size());
    for (std::size_t l = 0; l < problem.limits.size(); ++l)
        for (std::size_t i = 0; i < size(); ++i) {
            const Limit& limit = problem.limits[l];
            if (std::find(limit.moves.begin(), limit.moves.end(), active_[i]) == limit.moves.end()) continue;
            const Move& move = problem.moves[active_[i]];
            by_limit_[l][i] = move.most * (limit.as_bought ? move.bought : 1) / (limit.grams > 0 ? limit.grams : 1);
        }
    salt_limit_ = problem.least_salt > 0;
    limit_count_ = (meat_limit_ ? 1 : 0) + (salt_limit_ ? 1 : 0) + problem.limits.size();
    for (const Goal& goal : hard) limit_count_ += goal.kind == Goal::Kind::equal ? 2 : 1;
}

std::vector<double> Task::grams(const std::vector<double>& y) const {
    std::vector<double> all(problem_.moves.size(), 0.0);
    for (std::size_t i = 0; i < size(); ++i) all[active_[i]] = std::clamp(y[i], least_[i], 1.0) * problem_.moves[active_[i]].most;
    return all;
}

std::vector<double> Task::scaled(const std::vector<double>& grams) const {
    std::vector<double> y = least_;
    for (std::size_t i = 0; i < size() && !grams.empty(); ++i)
        y[i] = std::clamp(grams[active_[i]] / problem_.moves[active_[i]].most, least_[i], 1.0);
    return y;
}

bool Task::brings_binder(std::size_t i) const {
    const Move& move = problem_.moves[active_[i]];
    return move.role == Role::binder && move.brings_food();
}

std::optional<bool> Task::binder_used(const std::vector<double>& y) const {
    constexpr double unused = 0.02;
    std::optional<bool> used;
    for (std::size_t i = 0; i < size(); ++i) {
        if (!brings_binder(i)) continue;
        if (y[i] > unused && open_price_[i] == 0) return std::nullopt;
        used = used.value_or(false) || y[i] > unused;
    }
    return used;
}

std::vector<double> Task::across(std::vector<double> y) const {
    constexpr double filled = 0.5;
    const bool used = binder_used(y).value_or(false);
    for (std::size_t i = 0; i < size(); ++i)
        if (brings_binder(i)) y[i] = used ? 0 : filled;
    return y;
}

Material Task::total(const std::vector<double>& y) const {
    Material sum = problem_.start_total;
    for (std::size_t i = 0; i < size(); ++i) sum.add(problem_.moves[active_[i]].per_gram, y[i] * problem_.moves[active_[i]].most);
    return sum;
}

void Task::judge(const Material& batch, const State& state, std::vector<double>& breaches) const {
    breaches.clear();
    for (const Goal& goal : hard_) {
        const double past = (state.properties[goal.property] - goal.limit) / yardstick_.unit(goal.property);
        const double slack = goal.kind == Goal::Kind::equal ? equal_within : 0;
        if (goal.kind != Goal::Kind::at_least) breaches.push_back(past - slack);
        if (goal.kind != Goal::Kind::at_most) breaches.push_back(-past - slack);
    }
    if (meat_limit_) breaches.push_back(1 - batch[Amount::meat] / problem_.least_meat);
    if (salt_limit_) breaches.push_back((problem_.least_salt - state.properties[Property::salt_pct]) / yardstick_.unit(Property::salt_pct));
}

void Task::add_limits(const std::vector<double>& y, std::vector<double>& breaches) const {
    for (std::size_t l = 0; l < problem_.limits.size(); ++l) {
        double used = problem_.limits[l].grams > 0 ? -1 : 0;
        for (std::size_t i = 0; i < size(); ++i) used += by_limit_[l][i] * y[i];
        breaches.push_back(used);
    }
}

Trial Task::at(std::vector<double> y) const {
    Trial p;
    p.y = std::move(y);
    const Material batch = total(p.y);
    p.price = fixed_price_;
    for (std::size_t i = 0; i < size(); ++i) p.price += open_price_[i] * p.y[i];
    if (batch[Amount::mass] < least_mass) {
        const std::size_t rows = yardstick_.row_count();
        p.rows.assign(rows, no_batch / std::sqrt(static_cast<double>(rows)));
        p.breaches.assign(limit_count_, no_batch);
        p.deviation = no_batch;
        p.empty = true;
        return p;
    }
    const State state = models_.state(batch, process_.state);
    yardstick_.rows(batch, state, p.rows);
    p.deviation = length(p.rows);
    judge(batch, state, p.breaches);
    add_limits(p.y, p.breaches);
    return p;
}

void Task::slopes(const Trial& point, Matrix& rows, Matrix& breaches) const {
    if (point.empty) {  // no way leads out of it but another start
        rows = Matrix(point.rows.size(), size());
        breaches = Matrix(limit_count_, size());
        return;
    }
    const Material here = total(point.y);
    const State state = models_.state(here, process_.state);
    const std::size_t judged = limit_count_ - problem_.limits.size();
    rows = Matrix(point.rows.size(), size());
    breaches = Matrix(limit_count_, size());
    std::vector<double> row, breach;
    for (std::size_t s = 0; s < moving_.size(); ++s) {
        Material there = here;
        const double bump = step * reach_[s];
        there[sum_at(moving_[s])] += bump;
        const bool runs = moves_state(moving_[s]);
        const State moved = runs ? models_.state(there, process_.state) : state;
        yardstick_.rows(there, moved, row);
        judge(there, moved, breach);
        const auto multiply = [&](double slope, double* into) {
            if (slope != 0)
                for (std::size_t i = 0; i < size(); ++i) into[i] += slope * by_move_[s][i];
        };
        for (std::size_t r = 0; r < row.size(); ++r) multiply((row[r] - point.rows[r]) / bump, rows[r]);
        if (runs)
            for (std::size_t b = 0; b < judged; ++b) multiply((breach[b] - point.breaches[b]) / bump, breaches[b]);
    }
    for (std::size_t l = 0; l < problem_.limits.size(); ++l) std::copy_n(by_limit_[l], size(), breaches[judged + l]);
}

}  // namespace standin
