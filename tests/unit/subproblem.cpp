// Slopes by the sums of the batch against differences move by move.
#include "adapt/search/subproblem.hpp"

#include <cmath>

#include "adapt/moves/losses.hpp"
#include "oracle/small_problem.hpp"
#include "support/catch.hpp"

using namespace standin;

TEST_CASE("task: the slopes are those of its own values") {
    std::size_t compared = 0;
    for (std::uint64_t number = 0; number < 12; ++number) {
        const SmallProblem small(number, 0);
        const std::vector<Choice> open(small.problem.moves.size(), Choice::open);
        const Subproblem subproblem(small.problem, small.problem.hard, small.distance(), small.models(), small.problem.processes.front(),
                                    open);
        if (subproblem.size() == 0) continue;
        const Iterate here = subproblem.at(std::vector<double>(subproblem.size(), 0.03));
        Matrix rows, violations;
        subproblem.slopes(here, rows, violations);
        for (std::size_t i = 0; i < subproblem.size(); ++i) {
            constexpr double step = 1e-4;
            std::vector<double> up = here.y, down = here.y;
            up[i] += step;
            down[i] -= step;
            const Iterate above = subproblem.at(up), below = subproblem.at(down);
            const auto check = [&](double slope, double after, double before) {
                const double expected = (after - before) / (2 * step);
                CAPTURE(number, i);
                CHECK(slope == Approx(expected).epsilon(0.02).margin(0.02));
                ++compared;
            };
            for (std::size_t r = 0; r < here.rows.size(); ++r) check(rows[r][i], above.rows[r], below.rows[r]);
            for (std::size_t b = 0; b < here.violations.size(); ++b) check(violations[b][i], above.violations[b], below.violations[b]);
        }
    }
    CHECK(compared > 500);
}

TEST_CASE("task: the squares of the rows are what is felt and what is lost") {
    for (std::uint64_t number = 0; number < 12; ++number) {
        const SmallProblem small(number, 0);
        const std::vector<Choice> open(small.problem.moves.size(), Choice::open);
        const ProcessOption& process = small.problem.processes.front();
        const Subproblem subproblem(small.problem, small.problem.hard, small.distance(), small.models(), process, open);
        if (subproblem.size() == 0) continue;
        const Iterate here = subproblem.at(std::vector<double>(subproblem.size(), 0.05));
        const Rebalancer rebalancer(small.problem, small.distance(), small.models());
        const Material total = rebalancer.total(subproblem.grams(here.y));
        const double felt = small.distance().square(total, rebalancer.state(total, process));
        CHECK(here.square == Approx(felt + lost_square(small.problem, subproblem.grams(here.y))).epsilon(1e-9));
    }
}

TEST_CASE("task: with nothing left to weigh the numbers keep their size, and no limit is kept") {
    std::size_t emptied = 0;
    for (std::uint64_t number = 0; number < 12; ++number) {
        SmallProblem small(number, 0);
        Problem& problem = small.problem;
        if (problem.moves.empty()) continue;
        problem.start_total = Material();
        problem.least_meat = 0;
        problem.constraints.clear();
        const std::vector<Goal> none;
        const std::vector<Choice> open(problem.moves.size(), Choice::open);
        const Subproblem subproblem(problem, none, small.distance(), small.models(), problem.processes.front(), open);
        const Iterate empty = subproblem.at(std::vector<double>(subproblem.size(), 0.0));
        CHECK(empty.empty);
        CHECK(empty.violation() > 0);
        CHECK(empty.rows.size() >= small.distance().row_count());
        Matrix rows, violations;
        subproblem.slopes(empty, rows, violations);
        CHECK(rows.rows() == empty.rows.size());
        ++emptied;
    }
    CHECK(emptied > 6);
}

TEST_CASE("task: the distance gives as many rows as it says") {
    for (std::uint64_t number = 0; number < 4; ++number) {
        const SmallProblem small(number, number % 3);
        const std::vector<Choice> open(small.problem.moves.size(), Choice::open);
        const Subproblem subproblem(small.problem, small.problem.hard, small.distance(), small.models(), small.problem.processes.front(),
                                    open);
        const Rebalancer rebalancer(small.problem, small.distance(), small.models());
        const Material total = rebalancer.total(subproblem.grams(std::vector<double>(subproblem.size(), 0.05)));
        std::vector<double> rows;
        small.distance().rows(total, rebalancer.state(total, small.problem.processes.front()), rows);
        CHECK(rows.size() == small.distance().row_count());
    }
}
