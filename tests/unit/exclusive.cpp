// Moves that exclude each other: one food added in a role, one line for one food, down or up.
#include "adapt/moves/exclusive.hpp"

#include <algorithm>

#include "oracle/small_problem.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace exclusive_test {

Move move_of(MoveKind kind, std::size_t line, const char* food, Role role) {
    Move move;
    move.kind = kind;
    move.line = line;
    move.food.ingredient = food;
    move.role = role;
    move.most = 10;
    return move;
}

// Two flours and an acid to add; kale for the first line in two forms, and for the second; kale beside both; the first line down and up.
Problem some_moves() {
    Problem p;
    p.moves = {move_of(MoveKind::add, 0, "potato-starch", Role::binder), move_of(MoveKind::add, 0, "rice-flour", Role::binder),
               move_of(MoveKind::add, 0, "lime-juice", Role::acid),      move_of(MoveKind::stand_in, 0, "kale", Role::green),
               move_of(MoveKind::stand_in, 0, "kale", Role::green),      move_of(MoveKind::stand_in, 1, "kale", Role::green),
               move_of(MoveKind::add, 0, "kale", Role::green),           move_of(MoveKind::reduce, 0, "spinach", Role::green),
               move_of(MoveKind::raise, 0, "spinach", Role::green)};
    p.missing = {true, true};
    p.formula.lines.resize(2);
    for (auto& line : p.formula.lines) line.ingredient = "spinach";
    p.exclusive = exclusive_groups(p, knowledge());
    return p;
}

TEST_CASE("exclusive: one food added in a role, one food for a line or beside it, a line down or up") {
    const Problem p = some_moves();
    CHECK_FALSE(keeps_exclusions(p, {0, 1}));
    CHECK_FALSE(keeps_exclusions(p, {3, 4}));
    CHECK_FALSE(keeps_exclusions(p, {3, 6}));
    CHECK_FALSE(keeps_exclusions(p, {5, 6}));
    CHECK_FALSE(keeps_exclusions(p, {7, 8}));
    CHECK(keeps_exclusions(p, {0, 2, 3, 5, 7}));  // for two lines it may come in twice
    CHECK(keeps_exclusions(p, {}));
}

TEST_CASE("exclusive: of foods for a line that is there one is taken") {
    Problem p;
    p.formula.lines.resize(1);
    p.formula.lines.front().ingredient = "spinach";
    p.missing = {false};
    p.moves = {move_of(MoveKind::stand_in, 0, "kale", Role::green), move_of(MoveKind::stand_in, 0, "chard", Role::green)};
    p.exclusive = exclusive_groups(p, knowledge());
    CHECK_FALSE(keeps_exclusions(p, {0, 1}));
    p.missing = {true};
    p.exclusive = exclusive_groups(p, knowledge());
    CHECK(keeps_exclusions(p, {0, 1}));
}

TEST_CASE("exclusive: every plan of the search keeps the groups, and an open batch holds their shares to one") {
    std::size_t grouped = 0;
    for (std::uint64_t number = 400; number < 470; ++number) {
        const SmallProblem small(number, 10);
        grouped += small.problem.exclusive.size();
        SearchLimits limits;
        for (const auto& plan : search_plans(small.problem, small.distance(), small.models(), limits).plans)
            CHECK(keeps_exclusions(small.problem, used_moves(small.problem, plan.grams)));
        const Rebalancer rebalancer(small.problem, small.distance(), small.models());
        const std::vector<Choice> open(small.problem.moves.size(), Choice::open);
        const Solution relaxed = rebalancer.solve(open, small.problem.processes.front(), {});
        for (const auto& group : small.problem.exclusive) {
            double shares = 0;
            for (const auto m : group)
                if (small.problem.moves[m].most > 0) shares += relaxed.grams[m] / small.problem.moves[m].most;
            if (relaxed.feasible()) CHECK(shares <= 1 + 1e-3);
        }
    }
    CHECK(grouped > 20);  // else nothing was tried
}

}  // namespace exclusive_test
