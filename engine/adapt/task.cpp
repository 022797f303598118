#include "adapt/task.hpp"

#include <algorithm>
#include <cmath>

#include "adapt/losses.hpp"

namespace standin {
namespace {

constexpr double step = 1e-6;         // of the most a sum can move, for forward differences
constexpr double kink = 1e-9;         // where a line that is whole begins to be lost
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
    by_limit_ = Matrix(problem.limits.size(), size());
    for (std::size_t l = 0; l < problem.limits.size(); ++l) {
        const Limit& limit = problem.limits[l];
        limit_start_.push_back(-limit.room / limit.scale);
        for (std::size_t i = 0; i < size(); ++i)
            by_limit_[l][i] = limit.per_gram[active_[i]] * problem.moves[active_[i]].most / limit.scale;
    }
    list_losses();
    limit_count_ = problem.limits.size();
    for (const Goal& goal : hard) limit_count_ += goal.kind == Goal::Kind::equal ? 2 : 1;
}

// A row for each line that some move touches or that is short from the start: the root of its loss times its lost share.
void Task::list_losses() {
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
        lost_start_.push_back(root * lost[lines[r]]);
        for (std::size_t i = 0; i < size(); ++i) {
            const auto& covers = problem_.moves[active_[i]].covers;
            if (covers && covers->line == lines[r]) by_loss_[r][i] = -root * covers->per_gram * problem_.moves[active_[i]].most;
        }
    }
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

std::vector<std::vector<double>> Task::with_each_binder(const std::vector<double>& y) const {
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

Material Task::total(const std::vector<double>& y) const {
    Material sum = problem_.start_total;
    for (std::size_t i = 0; i < size(); ++i) sum.add(problem_.moves[active_[i]].per_gram, y[i] * problem_.moves[active_[i]].most);
    return sum;
}

void Task::judge(const State& state, std::vector<double>& breaches) const {
    breaches.clear();
    for (const Goal& goal : hard_) {
        const double past = (state.properties[goal.property] - goal.limit) / yardstick_.unit(goal.property);
        const double slack = goal.kind == Goal::Kind::equal ? equal_within : 0;
        if (goal.kind != Goal::Kind::at_least) breaches.push_back(past - slack);
        if (goal.kind != Goal::Kind::at_most) breaches.push_back(-past - slack);
    }
}

void Task::add_limits(const std::vector<double>& y, std::vector<double>& breaches) const {
    for (std::size_t l = 0; l < by_limit_.rows(); ++l) {
        double breach = limit_start_[l];
        for (std::size_t i = 0; i < size(); ++i) breach += by_limit_[l][i] * y[i];
        breaches.push_back(breach);
    }
}

void Task::add_losses(const std::vector<double>& y, std::vector<double>& rows) const {
    for (std::size_t r = 0; r < by_loss_.rows(); ++r) rows.push_back(std::max(0.0, lost(r, y)));
}

double Task::lost(std::size_t row, const std::vector<double>& y) const {
    double sum = lost_start_[row];
    for (std::size_t i = 0; i < size(); ++i) sum += by_loss_[row][i] * y[i];
    return sum;
}

Trial Task::at(std::vector<double> y) const {
    Trial p;
    p.y = std::move(y);
    const Material batch = total(p.y);
    p.price = fixed_price_;
    for (std::size_t i = 0; i < size(); ++i) p.price += open_price_[i] * p.y[i];
    if (batch[Amount::mass] < least_mass) {
        const std::size_t rows = yardstick_.row_count() + by_loss_.rows();
        p.rows.assign(rows, no_batch / std::sqrt(static_cast<double>(rows)));
        p.breaches.assign(limit_count_, no_batch);
        p.square = no_batch * no_batch;
        p.empty = true;
        return p;
    }
    const State state = models_.state(batch, process_.state);
    yardstick_.rows(batch, state, p.rows);
    add_losses(p.y, p.rows);
    for (const double row : p.rows) p.square += row * row;
    judge(state, p.breaches);
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
    const std::size_t judged = limit_count_ - problem_.limits.size(), felt = point.rows.size() - by_loss_.rows();
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
        judge(moved, breach);
        const auto multiply = [&](double slope, double* into) {
            if (slope != 0)
                for (std::size_t i = 0; i < size(); ++i) into[i] += slope * by_move_[s][i];
        };
        for (std::size_t r = 0; r < row.size(); ++r) multiply((row[r] - point.rows[r]) / bump, rows[r]);
        if (runs)
            for (std::size_t b = 0; b < judged; ++b) multiply((breach[b] - point.breaches[b]) / bump, breaches[b]);
    }
    for (std::size_t r = 0; r < by_loss_.rows(); ++r)
        if (lost(r, point.y) > -kink) std::copy_n(by_loss_[r], size(), rows[felt + r]);
    for (std::size_t l = 0; l < problem_.limits.size(); ++l) std::copy_n(by_limit_[l], size(), breaches[judged + l]);
}

}  // namespace standin
