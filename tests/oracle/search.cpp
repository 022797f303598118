// The search for plans against trying every set of moves.
#include <cmath>

#include "oracle/small_problem.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace search_test {

constexpr std::uint64_t problems = 40;
constexpr std::size_t most_moves = 7;
constexpr double solver = 2e-3;  // what two runs of the inner solver may differ by
constexpr double simplicity =
    0.4;  // squared; the search holds a simpler plan for as good as one that gains less (search.cpp: worth_adding, twice)

// A few grams left of a line are no plan: the search leaves out what is no weight, and its plan is then one of another set of moves.
bool leaves_a_remnant(const Problem& problem, const std::vector<double>& grams) {
    for (std::size_t m = 0; m < grams.size(); ++m) {
        const Move& move = problem.moves[m];
        const double left = move.most - grams[m];
        if (move.kind == MoveKind::reduce && !move.trim && grams[m] > 0 && left > 0 && left < move.remnant) return true;
    }
    return false;
}

// The least cost of one set of moves, from several starts.
double value_of(const SmallProblem& small, const Rebalancer& rebalancer, std::size_t set, const ProcessOption& process) {
    const auto& moves = small.problem.moves;
    std::vector<std::size_t> used;
    for (std::size_t m = 0; m < moves.size(); ++m)
        if (set >> m & 1U) used.push_back(m);
    if (!keeps_exclusions(small.problem, used)) return INFINITY;
    std::vector<Choice> choices(moves.size(), Choice::out);
    for (std::size_t m = 0; m < moves.size(); ++m)
        if (set >> m & 1U) choices[m] = Choice::in;
    double best = INFINITY;
    for (const double share : {0.0, 0.3, 0.7, 1.0}) {
        std::vector<double> from;
        for (const auto& move : moves) from.push_back(share * move.most);
        const Solution found = rebalancer.solve(choices, process, from);
        if (found.feasible() && !leaves_a_remnant(small.problem, found.grams)) best = std::min(best, found.cost + process.price);
    }
    return best;
}

struct Compared {
    double search = INFINITY, exhaustive = INFINITY;
    bool proved = false;
};

Compared compare(std::uint64_t number) {
    const SmallProblem small(number, most_moves);
    const Rebalancer rebalancer(small.problem, small.distance(), small.models());
    Compared c;
    SearchLimits limits;
    limits.plans = 3;
    const SearchResult found = search_plans(small.problem, small.distance(), small.models(), limits);
    c.proved = found.proved;
    if (!found.plans.empty()) c.search = found.plans.front().cost;
    for (const auto& process : small.problem.processes)
        for (std::size_t set = 0; set < std::size_t{1} << small.problem.moves.size(); ++set)
            c.exhaustive = std::min(c.exhaustive, value_of(small, rebalancer, set, process));
    return c;
}

TEST_CASE("the best plan of the search is the best of all sets of moves") {
    std::size_t same = 0, simpler = 0, worse = 0, better = 0, none = 0;
    std::string cases;
    for (std::uint64_t n = 0; n < problems; ++n) {
        const Compared c = compare(n);
        if (std::isinf(c.search) && std::isinf(c.exhaustive)) {
            ++none;
            continue;
        }
        const double gap = c.search - c.exhaustive;
        if (gap < -solver) ++better;
        else if (gap <= solver) ++same;
        else if (gap <= simplicity) ++simpler;
        else {
            ++worse;
            cases += "\n  problem " + std::to_string(n) + ": search " + std::to_string(c.search) + ", exhaustive " +
                     std::to_string(c.exhaustive) + (c.proved ? ", called proved" : "");
        }
    }
    WARN(problems << " problems of up to " << most_moves << " moves: " << same << " alike within " << solver << ", " << simpler
                  << " simpler and within " << simplicity << ", " << better << " better than the sets' own solving, " << none
                  << " without a plan in either, " << worse << " worse" << cases);
    CHECK(worse == 0);
}

}  // namespace search_test
