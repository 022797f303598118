// The rebalancing against a search that uses no derivatives: compass steps along random directions from many starts.
#include <cmath>

#include "adapt/moves/losses.hpp"
#include "oracle/small_problem.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace rebalance_test {

constexpr std::uint64_t problems = 50;
constexpr std::size_t most_moves = 5;
constexpr double alike_within = 0.02;  // squared noticeable differences; half as much of a distance of one
constexpr double forbidden = 1e4;      // price of breaking a limit altogether

// The subproblem once more, from its description alone: squares and prices, with everything forbidden made slack_price.
class Objective {
public:
    explicit Objective(const SmallProblem& small) : small_(small), rebalancer_(small.problem, small.distance(), small.models()) {}

    double operator()(const std::vector<double>& y) const {
        const Problem& p = small_.problem;
        const Material batch = rebalancer_.total(grams(y));
        const State state = rebalancer_.state(batch, p.processes.front());
        double value = small_.distance().square(batch, state) + lost_square(p, grams(y));
        for (const auto& move : p.moves) value += move.price;
        return value + forbidden * violation(y, state);
    }

    /// Lower end of each variable: a move that is chosen moves its least or more.
    double least(std::size_t m) const { return small_.problem.moves[m].least / small_.problem.moves[m].most; }

    std::vector<double> grams(const std::vector<double>& y) const {
        std::vector<double> all;
        for (std::size_t m = 0; m < y.size(); ++m) all.push_back(y[m] * small_.problem.moves[m].most);
        return all;
    }

    bool keeps_all(const std::vector<double>& y) const {
        return violation(y, rebalancer_.state(rebalancer_.total(grams(y)), small_.problem.processes.front())) <= 0;
    }

    double violation(const std::vector<double>& y, const State& state) const {
        const Problem& p = small_.problem;
        double sum = 0;
        for (const auto& goal : p.hard) {
            const double unit = small_.distance().step(goal.property) > 0 ? small_.distance().step(goal.property) : 1;
            const double past = (state.properties[goal.property] - goal.limit) / unit;
            const double breach = goal.kind == Goal::Kind::at_most    ? past
                                  : goal.kind == Goal::Kind::at_least ? -past
                                                                      : std::abs(past) - 0.1;
            sum += std::max(0.0, breach - 1e-5);
        }
        for (const auto& group : p.exclusive) {  // all are chosen here: their shares come to one
            double shares = 0;
            for (const auto m : group) shares += y[m];
            sum += std::max(0.0, shares - 1 - 1e-5);
        }
        for (const auto& limit : p.constraints) sum += std::max(0.0, limit.violation(grams(y)) - 1e-5);
        return sum;
    }

private:
    const SmallProblem& small_;
    Rebalancer rebalancer_;
};

// Steps along random directions and the axes, halved when none helps.
double compass(const Objective& f, std::vector<double>& y, std::mt19937_64& random) {
    double best = f(y);
    const auto unit = [&] { return static_cast<double>(random() >> 11) * 0x1.0p-52 - 1; };
    for (double step = 0.25; step > 2e-5; step *= 0.6) {
        for (std::size_t t = 0; t < 6 * y.size(); ++t) {
            std::vector<double> way(y.size(), 0.0);
            if (t < y.size()) way[t] = 1;
            else
                for (auto& w : way) w = unit();
            for (const double side : {1.0, -1.0}) {
                std::vector<double> next = y;
                for (std::size_t i = 0; i < y.size(); ++i) next[i] = std::clamp(y[i] + side * step * way[i], f.least(i), 1.0);
                const double value = f(next);
                if (value >= best) continue;
                best = value;
                y = std::move(next);
                break;
            }
        }
    }
    return best;
}

TEST_CASE("no search without derivatives finds a better balance than the solver") {
    std::size_t compared = 0, alike = 0, solver_better = 0, worse = 0;
    double worst = 0;
    std::string cases;
    for (std::uint64_t n = 100; n < 100 + problems; ++n) {
        const SmallProblem small(n, most_moves);
        const std::size_t size = small.problem.moves.size();
        if (size == 0) continue;
        const Rebalancer rebalancer(small.problem, small.distance(), small.models());
        const std::vector<Choice> all_in(size, Choice::in);
        Solution solved = rebalancer.solve(all_in, small.problem.processes.front(), {});
        if (!solved.feasible())  // as the search does before it gives a plan up
            solved = rebalancer.solve(all_in, small.problem.processes.front(), {}, {.multistart = true});
        const Objective f(small);
        std::mt19937_64 random(n);
        double other = INFINITY;
        bool met = false;  // by the best point; a little that is forbidden costs less than another unit of distance
        for (int start = 0; start < 8; ++start) {
            std::vector<double> y(size, start / 4.0);
            if (start > 4)
                for (auto& v : y) v = static_cast<double>(random() >> 11) * 0x1.0p-53;
            for (std::size_t i = 0; i < size; ++i) y[i] = std::clamp(y[i], f.least(i), 1.0);
            const double value = compass(f, y, random);
            if (value >= other) continue;
            other = value;
            met = f.keeps_all(y);
        }
        if (!met && !solved.feasible()) continue;
        ++compared;
        const double gap = (solved.feasible() ? solved.cost : 1e3) - other;
        if (gap > worst) worst = gap;
        if (gap > alike_within) {
            ++worse;
            cases += "\n  problem " + std::to_string(n) + ": solver " + std::to_string(solved.cost) +
                     (solved.feasible() ? "" : " (breaks a limit)") + ", compass " + std::to_string(other);
        } else if (gap < -alike_within) ++solver_better;
        else ++alike;
    }
    WARN(compared << " problems of up to " << most_moves << " moves: " << alike << " alike within " << alike_within << ", " << solver_better
                  << " better by the solver, " << worse << " worse (by " << worst << " at most)" << cases);
    CHECK(compared >= 15);
    CHECK(worse == 0);
}

}  // namespace rebalance_test
