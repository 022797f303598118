#include "optimize/quadratic.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace standin {
namespace {

constexpr double nothing = 1e-12;

// Cholesky in place of the leading n x n; the matrix is taken to be positive definite, what rounding makes of a pivot is kept above zero.
void factor(Matrix& m, std::size_t n) {
    for (std::size_t j = 0; j < n; ++j) {
        double pivot = m[j][j];
        for (std::size_t k = 0; k < j; ++k) pivot -= m[j][k] * m[j][k];
        m[j][j] = std::sqrt(std::max(pivot, 1e-14));
        for (std::size_t i = j + 1; i < n; ++i) {
            double value = m[i][j];
            for (std::size_t k = 0; k < j; ++k) value -= m[i][k] * m[j][k];
            m[i][j] = value / m[j][j];
        }
    }
}

void solve(const Matrix& factor, std::size_t n, double* x) {
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t k = 0; k < i; ++k) x[i] -= factor[i][k] * x[k];
        x[i] /= factor[i][i];
    }
    for (std::size_t i = n; i-- > 0;) {
        for (std::size_t k = i + 1; k < n; ++k) x[i] -= factor[k][i] * x[k];
        x[i] /= factor[i][i];
    }
}

class ActiveSet {
public:
    ActiveSet(const Quadratic& q, std::vector<double> start) : q_(q), n_(q.slope.size()), x_(std::move(start)), at_bound_(n_ + 1, 0) {
        for (std::size_t i = 0; i < n_; ++i) {
            x_[i] = std::clamp(x_[i], q_.low[i], q_.high[i]);
            if (x_[i] <= q_.low[i]) at_bound_[i] = -1;
            else if (x_[i] >= q_.high[i]) at_bound_[i] = 1;
        }
        double over = 0;
        left_.resize(q_.rows.rows());
        for (std::size_t j = 0; j < left_.size(); ++j) {
            left_[j] = q_.room[j];
            for (std::size_t i = 0; i < n_; ++i) left_[j] -= q_.rows[j][i] * x_[i];
            over = std::max(over, -left_[j]);
        }
        for (auto& left : left_) left += over;
        x_.push_back(over);
        if (over <= 0) at_bound_[n_] = -1;
        gradient_.resize(n_ + 1);
        for (std::size_t i = 0; i < n_; ++i) {
            gradient_[i] = q_.slope[i];
            for (std::size_t k = 0; k < n_; ++k) gradient_[i] += q_.curvature[i][k] * x_[k];
        }
        gradient_[n_] = q_.slack_price * (1 + over);
    }

    Least run() && {
        const std::size_t most = 20 + 4 * (n_ + left_.size());
        for (std::size_t round = 0; round < most; ++round) {
            step();
            if (advance() && !release()) break;
        }
        x_.pop_back();
        Least least{std::move(x_), std::vector<double>(left_.size(), 0.0)};
        for (std::size_t j = 0; j < active_.size() && j < multipliers_.size(); ++j) least.multipliers[active_[j]] = multipliers_[j];
        return least;
    }

private:
    double entry(std::size_t row, std::size_t i) const { return i == n_ ? -1.0 : q_.rows[row][i]; }
    double curvature(std::size_t i, std::size_t k) const {
        return i == n_ || k == n_ ? (i == k ? q_.slack_price : 0.0) : q_.curvature[i][k];
    }

    // The way to the least point of the free variables that keeps the rows held, and the multipliers of those.
    void step() {
        free_.clear();
        for (std::size_t i = 0; i <= n_; ++i)
            if (!at_bound_[i]) free_.push_back(i);
        const std::size_t f = free_.size(), a = active_.size();
        Matrix h(f, f);
        for (std::size_t i = 0; i < f; ++i)
            for (std::size_t k = 0; k <= i; ++k) h[i][k] = curvature(free_[i], free_[k]);
        factor(h, f);
        std::vector<double> down(f);
        for (std::size_t i = 0; i < f; ++i) down[i] = -gradient_[free_[i]];
        solve(h, f, down.data());
        multipliers_.assign(a, 0.0);
        if (a > 0) {
            Matrix through(a, f), schur(a, a);
            for (std::size_t j = 0; j < a; ++j) {
                for (std::size_t i = 0; i < f; ++i) through[j][i] = entry(active_[j], free_[i]);
                solve(h, f, through[j]);
            }
            for (std::size_t j = 0; j < a; ++j) {
                for (std::size_t i = 0; i < f; ++i) multipliers_[j] += entry(active_[j], free_[i]) * down[i];
                for (std::size_t k = 0; k <= j; ++k)
                    for (std::size_t i = 0; i < f; ++i) schur[j][k] += entry(active_[j], free_[i]) * through[k][i];
            }
            factor(schur, a);
            solve(schur, a, multipliers_.data());
            for (std::size_t j = 0; j < a; ++j)
                for (std::size_t i = 0; i < f; ++i) down[i] -= multipliers_[j] * through[j][i];
        }
        direction_.assign(n_ + 1, 0.0);
        for (std::size_t i = 0; i < f; ++i) direction_[free_[i]] = down[i];
    }

    // Along the way as length as nothing stands against it; false when something did and is held from now on.
    bool advance() {
        double length = 1;
        std::size_t blocking = none, row = none;
        for (const auto i : free_) {
            const double room = direction_[i] < 0             ? (i == n_ ? x_[i] : x_[i] - q_.low[i]) / -direction_[i]
                                : direction_[i] > 0 && i < n_ ? (q_.high[i] - x_[i]) / direction_[i]
                                                              : std::numeric_limits<double>::infinity();
            if (room < length) {
                length = std::max(0.0, room);
                blocking = i;
            }
        }
        std::vector<double> taken(left_.size(), 0.0);
        for (std::size_t j = 0; j < left_.size(); ++j) {
            for (const auto i : free_) taken[j] += entry(j, i) * direction_[i];
            const bool held = std::find(active_.begin(), active_.end(), j) != active_.end();
            if (held || taken[j] <= nothing || left_[j] >= length * taken[j]) continue;
            length = std::max(0.0, left_[j] / taken[j]);
            row = j;
            blocking = none;
        }
        for (const auto i : free_) x_[i] += length * direction_[i];
        for (std::size_t j = 0; j < left_.size(); ++j) left_[j] -= length * taken[j];
        for (std::size_t i = 0; i < n_; ++i)
            for (const auto k : free_)
                if (k < n_) gradient_[i] += q_.curvature[i][k] * length * direction_[k];
        gradient_[n_] = q_.slack_price * (1 + x_[n_]);
        if (row != none) active_.push_back(row);
        else if (blocking != none) {
            at_bound_[blocking] = direction_[blocking] < 0 ? -1 : 1;
            if (blocking < n_) x_[blocking] = direction_[blocking] < 0 ? q_.low[blocking] : q_.high[blocking];
            else x_[n_] = 0;
        }
        return row == none && blocking == none;
    }

    // Slope of the whole along one variable, with what the held rows push back.
    double reduced_gradient(std::size_t i) const {
        double slope = gradient_[i];
        for (std::size_t j = 0; j < active_.size(); ++j) slope += multipliers_[j] * entry(active_[j], i);
        return slope;
    }

    // Lets go of what holds back the most; false when nothing does: the least point is reached.
    bool release() {
        double worst = -1e-9;
        std::size_t variable = none, row = none;
        for (std::size_t j = 0; j < active_.size(); ++j)
            if (multipliers_[j] < worst) {
                worst = multipliers_[j];
                row = j;
            }
        for (std::size_t i = 0; i <= n_; ++i) {
            if (!at_bound_[i] || (i < n_ && q_.high[i] - q_.low[i] < nothing)) continue;
            const double gain = at_bound_[i] < 0 ? reduced_gradient(i) : -reduced_gradient(i);
            if (gain < worst) {
                worst = gain;
                variable = i;
            }
        }
        if (variable != none) {
            at_bound_[variable] = 0;
            if (!first_) return true;
            // The first time all that reduced_gradient are let go at once: many do, and one by one would take a round each.
            first_ = false;
            for (std::size_t i = 0; i < n_; ++i)
                if (at_bound_[i] && q_.high[i] - q_.low[i] >= nothing &&
                    (at_bound_[i] < 0 ? reduced_gradient(i) : -reduced_gradient(i)) < worst / 10)
                    at_bound_[i] = 0;
            return true;
        }
        if (row != none) active_.erase(active_.begin() + static_cast<std::ptrdiff_t>(row));
        return row != none;
    }

    static constexpr std::size_t none = std::numeric_limits<std::size_t>::max();

    const Quadratic& q_;
    std::size_t n_;                     // variables; the slack is one more
    std::vector<double> x_, gradient_;  // slope of the objective at x
    std::vector<int> at_bound_;         // -1, 1: held at that end of the box
    std::vector<double> left_;          // room left in each row
    std::vector<std::size_t> active_;   // rows kept at their limit
    std::vector<std::size_t> free_;
    std::vector<double> direction_, multipliers_;
    bool first_ = true;
};

}  // namespace

Least least_of(const Quadratic& programme, std::vector<double> start) { return ActiveSet(programme, std::move(start)).run(); }

}  // namespace standin
