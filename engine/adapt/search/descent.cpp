#include "adapt/search/descent.hpp"

#include <algorithm>
#include <cmath>

namespace standin {
namespace {

constexpr double first_penalty = 100;  // of one unit of breach while the direction is sought; more where that does not hold it off
constexpr double most_penalty = 1e4;
constexpr double doubt = 3;                                 // how many times its predicted a step may gain after all
constexpr double kept = 1e-6, plain = 1e-3, slight = 1e-2;  // a breach that is none, that rounding does not explain, that steps mend

class Descent {
public:
    Descent(const Subproblem& subproblem, std::vector<double> y, bool by_move)
        : subproblem_(subproblem),
          by_move_(by_move),
          here_(subproblem.at(std::move(y))),
          correction_(subproblem.size(), subproblem.size()) {}

    Iterate run(double gain, double cutoff) && {
        constexpr int most_rounds = 60;
        for (int round = 0; round < most_rounds; ++round) {
            if (by_move_) subproblem_.slopes_by_move(here_, rows_, violations_);
            else subproblem_.slopes(here_, rows_, violations_);
            learn();
            const Step step = best_step();
            if (here_.violation() <= slight && merit(here_) - doubt * step.predicted > cutoff) break;
            if (step.predicted < gain || stalled(step)) {
                if (here_.violation() <= kept || penalty_ >= most_penalty) break;
                penalty_ = most_penalty;
                continue;
            }
            remember(step);
            if (!line_search(step)) {
                if (damping_ > 1e4) break;
                damping_ *= 30;
                correction_ = Matrix(subproblem_.size(), subproblem_.size());
            }
        }
        return std::move(here_);
    }

private:
    struct Step {
        std::vector<double> direction;
        double predicted = 0;  // what the linear picture says it gains
        std::vector<double> multipliers;
    };

    // Whether the breach stays whatever is done: the linear picture has predicted_gain next to nothing of it for some rounds.
    bool stalled(const Step& step) {
        constexpr double next_to_nothing = 0.02;
        constexpr int rounds = 3;
        const double violation = here_.violation();
        stalled_ = violation > plain && step.predicted < next_to_nothing * penalty_ * violation ? stalled_ + 1 : 0;
        return stalled_ >= rounds;
    }

    double merit(const Iterate& p) const { return p.cost() + penalty_ * cost(p.violation()); }
    static double cost(double violation) { return violation + violation * violation / 2; }

    // What a step gains, as the linear picture has it.
    double predicted_gain(const std::vector<double>& direction) const {
        double square = 0, price = 0, worst = 0, bend = 0;
        for (std::size_t r = 0; r < rows_.rows(); ++r) {
            double value = here_.rows[r];
            for (std::size_t i = 0; i < direction.size(); ++i) value += rows_[r][i] * direction[i];
            square += value * value;
        }
        for (std::size_t i = 0; i < direction.size(); ++i) price += subproblem_.prices()[i] * direction[i];
        for (std::size_t b = 0; b < violations_.rows(); ++b) {
            double value = here_.violations[b];
            for (std::size_t i = 0; i < direction.size(); ++i) value += violations_[b][i] * direction[i];
            worst = std::max(worst, value);
        }
        for (std::size_t i = 0; i < direction.size(); ++i)
            for (std::size_t k = 0; k < direction.size(); ++k) bend += direction[i] * correction_[i][k] * direction[k] / 2;
        return here_.square - square - price - bend + penalty_ * (cost(here_.violation()) - cost(worst));
    }

    // Slope of the squared rows plus the limits at the multipliers of the last step.
    std::vector<double> slope_of_whole(const std::vector<double>& multipliers) const {
        std::vector<double> slope(subproblem_.size(), 0.0);
        for (std::size_t i = 0; i < slope.size(); ++i) {
            for (std::size_t r = 0; r < rows_.rows(); ++r) slope[i] += 2 * rows_[r][i] * here_.rows[r];
            for (std::size_t b = 0; b < multipliers.size(); ++b) slope[i] += multipliers[b] * violations_[b][i];
        }
        return slope;
    }

    void remember(const Step& step) {
        // While a breach still has its price, multipliers tell more of that than of the curve.
        double priced = 0;
        for (const double multiplier : step.multipliers) priced += multiplier;
        if (priced > 0.99 * penalty_) return;
        from_ = here_.y;
        multipliers_ = step.multipliers;
        slope_before_ = slope_of_whole(multipliers_);
    }

    // What the linear picture leaves out, curves in the models and the limits, shows in how the slope changed over the last step. What
    // bends upwards is kept, a rank at a time (the symmetric rank one update, on that part alone).
    void learn() {
        if (from_.empty()) return;
        const std::size_t n = subproblem_.size();
        std::vector<double> moved(n), left = slope_of_whole(multipliers_);
        double square = 0;
        for (std::size_t i = 0; i < n; ++i) {
            moved[i] = here_.y[i] - from_[i];
            square += moved[i] * moved[i];
            left[i] -= slope_before_[i];
        }
        from_.clear();
        if (square == 0) return;
        std::vector<double> along(rows_.rows(), 0.0);
        for (std::size_t r = 0; r < rows_.rows(); ++r)
            for (std::size_t i = 0; i < n; ++i) along[r] += rows_[r][i] * moved[i];
        std::vector<double> known(n, 0.0);
        double seen = 0, expected = 0;
        for (std::size_t i = 0; i < n; ++i) {
            for (std::size_t r = 0; r < rows_.rows(); ++r) left[i] -= 2 * rows_[r][i] * along[r];
            for (std::size_t k = 0; k < n; ++k) known[i] += correction_[i][k] * moved[k];
            seen += left[i] * moved[i];
            expected += known[i] * moved[i];
        }
        // What was learnt far away is scaled down to what is seen here before the rest is added (as NL2SOL sizes its second order part).
        const double sized = expected > 0 ? std::clamp(seen / expected, 0.0, 1.0) : 0;
        double bend = seen - sized * expected, size = 0;
        for (std::size_t i = 0; i < n; ++i) {
            left[i] -= sized * known[i];
            size += left[i] * left[i];
        }
        const bool add = bend > 1e-3 * std::sqrt(square * size);
        for (std::size_t i = 0; i < n; ++i)
            for (std::size_t k = 0; k < n; ++k) correction_[i][k] = sized * correction_[i][k] + (add ? left[i] * left[k] / bend : 0);
    }

    Step best_step() {
        const std::size_t n = subproblem_.size();
        Quadratic q;
        q.curvature = Matrix(n, n);
        q.slope = subproblem_.prices();
        for (std::size_t r = 0; r < rows_.rows(); ++r)
            for (std::size_t i = 0; i < n; ++i) {
                const double slope = 2 * rows_[r][i];
                if (slope == 0) continue;
                q.slope[i] += slope * here_.rows[r];
                for (std::size_t k = 0; k <= i; ++k) q.curvature[i][k] += slope * rows_[r][k];
            }
        for (std::size_t i = 0; i < n; ++i) {
            for (std::size_t k = 0; k < i; ++k) q.curvature[k][i] = q.curvature[i][k] + correction_[k][i];
            for (std::size_t k = 0; k <= i; ++k) q.curvature[i][k] += correction_[i][k];
            q.curvature[i][i] += damping_;
            q.low.push_back(subproblem_.least()[i] - here_.y[i]);
            q.high.push_back(1 - here_.y[i]);
        }
        q.rows = violations_;
        for (const double breach : here_.violations) q.room.push_back(-breach);
        q.slack_price = penalty_;
        Least least = least_of(q, std::vector<double>(n, 0.0));
        const double predicted = predicted_gain(least.at);
        if (predicted > 0) return {std::move(least.at), predicted, std::move(least.multipliers)};
        return {std::vector<double>(n, 0.0), 0, std::vector<double>(violations_.rows(), 0.0)};
    }

    // Along the step, shorter and shorter, until it gains a sufficient part of what was predicted_gain.
    bool line_search(const Step& step) {
        constexpr double sufficient = 0.05;
        const double before = merit(here_);
        double share = 1;
        for (int tries = 0; tries < 5; ++tries, share *= 0.4) {
            std::vector<double> y = here_.y;
            for (std::size_t i = 0; i < y.size(); ++i) y[i] = std::clamp(y[i] + share * step.direction[i], subproblem_.least()[i], 1.0);
            Iterate there = subproblem_.at(std::move(y));
            if (merit(there) > before - sufficient * share * step.predicted) continue;
            here_ = std::move(there);
            damping_ = std::clamp(tries == 0 ? damping_ / 5 : damping_ * 3, 1e-6, 1e4);
            return true;
        }
        return false;
    }

    const Subproblem& subproblem_;
    bool by_move_;
    Iterate here_;
    Matrix rows_, violations_;
    Matrix correction_;                                      // curvature that the linear rows do not have
    std::vector<double> from_, multipliers_, slope_before_;  // of the last step
    double damping_ = 1e-4, penalty_ = first_penalty;
    int stalled_ = 0;
};

}  // namespace

Iterate descend(const Subproblem& subproblem, std::vector<double> y, double gain, double cutoff, bool by_move) {
    return Descent(subproblem, std::move(y), by_move).run(gain, cutoff);
}

}  // namespace standin
