#include "adapt/search/subproblem.hpp"

#include <algorithm>
#include <cmath>

#include "adapt/moves/losses.hpp"

namespace standin {
namespace {

constexpr double step = 1e-6;         // of the most a sum can move, for forward differences
constexpr double kink = 1e-9;         // where a line that is whole begins to be lost
constexpr double least_mass = 1.0;    // g; a batch that moves away altogether is no batch
constexpr double no_batch = 1e3;      // what is said of it
constexpr double equal_within = 0.1;  // noticeable differences

// Amounts and notes alike by number, as they stand in a material.
Amount sum_at(std::size_t i) { return static_cast<Amount>(i); }

// Whether the models run on this sum; aroma and the doses are read off by the distance alone.
bool moves_state(std::size_t sum) {
    const auto dose = [&](Amount a) { return sum == static_cast<std::size_t>(a); };
    return sum < aroma_offset && !dose(Amount::dose_nut) && !dose(Amount::dose_herb) && !dose(Amount::dose_allium) &&
           !dose(Amount::dose_spice) && !dose(Amount::dose_seasoning);
}

}  // namespace

double Iterate::violation() const {
    double worst = empty ? no_batch : 0;
    for (const double violation : violations) worst = std::max(worst, violation);
    return worst;
}

Subproblem::Subproblem(const Problem& problem, const std::vector<Goal>& hard, const Distance& distance, const Models& middle,
                       const ProcessOption& process, const std::vector<Choice>& choices)
    : problem_(problem), hard_(hard), distance_(distance), models_(middle), process_(process) {
    for (std::size_t m = 0; m < choices.size(); ++m) {
        if (choices[m] == Choice::out || !(problem.moves[m].most > 0)) continue;
        active_.push_back(m);
        open_price_.push_back(choices[m] == Choice::open ? problem.moves[m].price : 0);
        if (choices[m] != Choice::open) fixed_price_ += problem.moves[m].price;
        const double least = std::min(1.0, problem.moves[m].least / problem.moves[m].most);
        least_.push_back(choices[m] == Choice::full ? 1.0 : choices[m] == Choice::in ? least : 0.0);
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
    list_constraints();
    list_losses();
    constraint_count_ = by_constraint_.rows();
    for (const Goal& goal : hard) constraint_count_ += goal.kind == Goal::Kind::equal ? 2 : 1;
}

// The problem's own, and one for each group of moves that exclude each other: their shares come to one at most.
void Subproblem::list_constraints() {
    std::vector<std::vector<std::size_t>> groups;
    for (const auto& group : problem_.exclusive) {
        std::vector<std::size_t> active;
        for (std::size_t i = 0; i < size(); ++i)
            if (std::find(group.begin(), group.end(), active_[i]) != group.end()) active.push_back(i);
        if (active.size() > 1) groups.push_back(std::move(active));
    }
    const std::size_t own = problem_.constraints.size();
    by_constraint_ = Matrix(own + groups.size(), size());
    for (std::size_t l = 0; l < own; ++l) {
        const LinearConstraint& limit = problem_.constraints[l];
        constraint_start_.push_back(-limit.room / limit.scale);
        for (std::size_t i = 0; i < size(); ++i)
            by_constraint_[l][i] = limit.per_gram[active_[i]] * problem_.moves[active_[i]].most / limit.scale;
    }
    for (std::size_t g = 0; g < groups.size(); ++g) {
        constraint_start_.push_back(-1);
        for (const auto i : groups[g]) by_constraint_[own + g][i] = 1;
    }
}

// A row for each line that some move touches or that is short from the start: the root of its loss times its lost share.
void Subproblem::list_losses() {
    if (problem_.loss.empty()) return;
    std::vector<std::size_t> lines;
    const std::vector<double> lost = lost_shares(problem_, {});
    for (std::size_t l = 0; l < problem_.loss.size(); ++l) {
        const bool touched = std::any_of(active_.begin(), active_.end(),
                                         [&](std::size_t m) { return problem_.moves[m].covers && problem_.moves[m].covers->line == l; });
        if (problem_.loss[l] > 0 && (touched || lost[l] > 0)) lines.push_back(l);
    }
    by_loss_ = Matrix(lines.size(), size());
    for (std::size_t r = 0; r < lines.size(); ++r) {
        const double root = std::sqrt(problem_.loss[lines[r]]);
        const double missed = 1 - (problem_.spared.empty() ? 0 : problem_.spared[lines[r]]);
        lost_start_.push_back(root * lost_of(problem_, lines[r], missing_share(problem_, lines[r])));
        for (std::size_t i = 0; i < size(); ++i) {
            const auto& covers = problem_.moves[active_[i]].covers;
            if (covers && covers->line == lines[r]) by_loss_[r][i] = -root / missed * covers->per_gram * problem_.moves[active_[i]].most;
        }
    }
}

std::vector<double> Subproblem::grams(const std::vector<double>& y) const {
    std::vector<double> all(problem_.moves.size(), 0.0);
    for (std::size_t i = 0; i < size(); ++i) all[active_[i]] = std::clamp(y[i], least_[i], 1.0) * problem_.moves[active_[i]].most;
    return all;
}

std::vector<double> Subproblem::scaled(const std::vector<double>& grams) const {
    std::vector<double> y = least_;
    for (std::size_t i = 0; i < size() && !grams.empty(); ++i)
        y[i] = std::clamp(grams[active_[i]] / problem_.moves[active_[i]].most, least_[i], 1.0);
    return y;
}

bool Subproblem::brings_binder(std::size_t i) const {
    const Move& move = problem_.moves[active_[i]];
    return move.role == Role::binder && move.kind != MoveKind::reduce;
}

std::optional<bool> Subproblem::binder_used(const std::vector<double>& y) const {
    constexpr double unused = 0.02;
    std::optional<bool> used;
    for (std::size_t i = 0; i < size(); ++i) {
        if (!brings_binder(i)) continue;
        if (y[i] > unused && open_price_[i] == 0) return std::nullopt;
        used = used.value_or(false) || y[i] > unused;
    }
    return used;
}

std::vector<double> Subproblem::without_binder(std::vector<double> y) const {
    for (std::size_t i = 0; i < size(); ++i)
        if (brings_binder(i)) y[i] = least_[i];
    return y;
}

std::vector<std::vector<double>> Subproblem::with_each_binder(const std::vector<double>& y) const {
    constexpr double plenty = 0.8;
    std::vector<std::vector<double>> starts;
    for (std::size_t chosen = 0; chosen < size(); ++chosen) {
        if (!brings_binder(chosen)) continue;
        starts.push_back(y);
        for (std::size_t i = 0; i < size(); ++i)
            if (brings_binder(i)) starts.back()[i] = std::max(least_[i], i == chosen ? plenty : 0.0);
    }
    return starts;
}

Material Subproblem::total(const std::vector<double>& y) const {
    Material sum = problem_.start_total;
    for (std::size_t i = 0; i < size(); ++i) sum.add(problem_.moves[active_[i]].per_gram, y[i] * problem_.moves[active_[i]].most);
    return sum;
}

void Subproblem::judge(const State& state, std::vector<double>& violations) const {
    violations.clear();
    for (const Goal& goal : hard_) {
        const double past = (state.properties[goal.property] - goal.limit) / distance_.unit(goal.property);
        const double slack = goal.kind == Goal::Kind::equal ? equal_within : 0;
        if (goal.kind != Goal::Kind::at_least) violations.push_back(past - slack);
        if (goal.kind != Goal::Kind::at_most) violations.push_back(-past - slack);
    }
}

void Subproblem::add_constraints(const std::vector<double>& y, std::vector<double>& violations) const {
    for (std::size_t l = 0; l < by_constraint_.rows(); ++l) {
        double violation = constraint_start_[l];
        for (std::size_t i = 0; i < size(); ++i) violation += by_constraint_[l][i] * y[i];
        violations.push_back(violation);
    }
}

void Subproblem::add_losses(const std::vector<double>& y, std::vector<double>& rows) const {
    for (std::size_t r = 0; r < by_loss_.rows(); ++r) rows.push_back(std::max(0.0, lost(r, y)));
}

double Subproblem::lost(std::size_t row, const std::vector<double>& y) const {
    double sum = lost_start_[row];
    for (std::size_t i = 0; i < size(); ++i) sum += by_loss_[row][i] * y[i];
    return sum;
}

Iterate Subproblem::at(std::vector<double> y) const {
    Iterate p;
    p.y = std::move(y);
    const Material batch = total(p.y);
    p.price = fixed_price_;
    for (std::size_t i = 0; i < size(); ++i) p.price += open_price_[i] * p.y[i];
    if (batch[Amount::mass] < least_mass) {
        const std::size_t rows = distance_.row_count() + by_loss_.rows();
        p.rows.assign(rows, no_batch / std::sqrt(static_cast<double>(rows)));
        p.violations.assign(constraint_count_, no_batch);
        p.square = no_batch * no_batch;
        p.empty = true;
        return p;
    }
    const State state = models_.state(batch, process_.state);
    distance_.rows(batch, state, p.rows);
    add_losses(p.y, p.rows);
    for (const double row : p.rows) p.square += row * row;
    judge(state, p.violations);
    add_constraints(p.y, p.violations);
    return p;
}

void Subproblem::slopes(const Iterate& point, Matrix& rows, Matrix& violations) const {
    if (point.empty) {  // no way leads out of it but another start
        rows = Matrix(point.rows.size(), size());
        violations = Matrix(constraint_count_, size());
        return;
    }
    const Material here = total(point.y);
    const State state = models_.state(here, process_.state);
    const std::size_t judged = constraint_count_ - by_constraint_.rows();
    rows = Matrix(point.rows.size(), size());
    violations = Matrix(constraint_count_, size());
    std::vector<double> row, violation;
    for (std::size_t s = 0; s < moving_.size(); ++s) {
        Material there = here;
        const double bump = step * reach_[s];
        there[sum_at(moving_[s])] += bump;
        const bool runs = moves_state(moving_[s]);
        const State moved = runs ? models_.state(there, process_.state) : state;
        distance_.rows(there, moved, row);
        judge(moved, violation);
        const auto multiply = [&](double slope, double* into) {
            if (slope != 0)
                for (std::size_t i = 0; i < size(); ++i) into[i] += slope * by_move_[s][i];
        };
        for (std::size_t r = 0; r < row.size(); ++r) multiply((row[r] - point.rows[r]) / bump, rows[r]);
        if (runs)
            for (std::size_t b = 0; b < judged; ++b) multiply((violation[b] - point.violations[b]) / bump, violations[b]);
    }
    linear_slopes(point, rows, violations);
}

// Of lost lines and of the limits on the variables, which are straight.
void Subproblem::linear_slopes(const Iterate& point, Matrix& rows, Matrix& violations) const {
    const std::size_t judged = constraint_count_ - by_constraint_.rows(), felt = point.rows.size() - by_loss_.rows();
    for (std::size_t r = 0; r < by_loss_.rows(); ++r)
        if (lost(r, point.y) > -kink) std::copy_n(by_loss_[r], size(), rows[felt + r]);
    for (std::size_t l = 0; l < by_constraint_.rows(); ++l) std::copy_n(by_constraint_[l], size(), violations[judged + l]);
}

void Subproblem::slopes_by_move(const Iterate& point, Matrix& rows, Matrix& violations) const {
    rows = Matrix(point.rows.size(), size());
    violations = Matrix(constraint_count_, size());
    if (point.empty) return;
    linear_slopes(point, rows, violations);
    const std::size_t judged = constraint_count_ - by_constraint_.rows(), felt = point.rows.size() - by_loss_.rows();
    for (std::size_t i = 0; i < size(); ++i) {
        auto y = point.y;
        const double bump = y[i] + step <= 1 ? step : -step;
        y[i] += bump;
        const Iterate there = at(std::move(y));
        if (there.empty) continue;
        for (std::size_t r = 0; r < felt; ++r) rows[r][i] = (there.rows[r] - point.rows[r]) / bump;
        for (std::size_t b = 0; b < judged; ++b) violations[b][i] = (there.violations[b] - point.violations[b]) / bump;
    }
}

}  // namespace standin
