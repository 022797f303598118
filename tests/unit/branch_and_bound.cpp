// Branch and bound on small fixed-charge least squares against trying every set of variables.
#include "optimize/branch_and_bound.hpp"

#include <cmath>
#include <map>
#include <random>

#include "optimize/quadratic.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace branch_and_bound_test {

constexpr std::size_t rows = 3;
constexpr double zero = 1e-6;

// |A x - b|^2 + the prices of the variables that are used, 0 <= x <= most.
struct LeastSquares {
    FixedCharge charge;
    std::vector<std::vector<double>> by_variable;  // columns of A
    std::vector<double> target;                    // b
};

struct Point {
    double cost = INFINITY;
    std::vector<double> x;

    bool feasible() const { return std::isfinite(cost); }
    const std::vector<double>& values() const { return x; }
};

struct Found {
    double cost = 0;
    std::set<std::size_t> used;
};

LeastSquares random_problem(std::uint32_t seed, std::size_t variables) {
    std::mt19937 engine(seed);
    std::uniform_real_distribution<double> coefficient(-1, 2), price(0.05, 1.5), most(0.5, 2), target(0, 4);
    LeastSquares problem;
    for (std::size_t v = 0; v < variables; ++v) {
        problem.charge.variables.push_back({most(engine), price(engine), true});
        problem.by_variable.emplace_back();
        for (std::size_t r = 0; r < rows; ++r) problem.by_variable.back().push_back(coefficient(engine));
    }
    for (std::size_t r = 0; r < rows; ++r) problem.target.push_back(target(engine));
    return problem;
}

Point least(const LeastSquares& problem, const Choices& choices) {
    const std::size_t n = choices.size();
    Quadratic quadratic;
    quadratic.curvature = Matrix(n, n);
    quadratic.rows = Matrix(0, n);
    quadratic.low.assign(n, 0);
    Point point;
    point.cost = 0;
    for (const auto b : problem.target) point.cost += b * b;
    for (std::size_t i = 0; i < n; ++i) {
        const auto& variable = problem.charge.variables[i];
        quadratic.high.push_back(choices[i] == Choice::out ? 0 : variable.most);
        quadratic.slope.push_back(choices[i] == Choice::open ? variable.price / variable.most : 0);
        if (choices[i] == Choice::in) point.cost += variable.price;
        for (std::size_t r = 0; r < rows; ++r) quadratic.slope[i] -= 2 * problem.by_variable[i][r] * problem.target[r];
        for (std::size_t j = 0; j < n; ++j) {
            quadratic.curvature[i][j] = i == j ? 1e-9 : 0;
            for (std::size_t r = 0; r < rows; ++r) quadratic.curvature[i][j] += 2 * problem.by_variable[i][r] * problem.by_variable[j][r];
        }
    }
    point.x = least_of(quadratic, std::vector<double>(n, 0)).at;
    for (std::size_t i = 0; i < n; ++i) {
        point.cost += quadratic.slope[i] * point.x[i];
        for (std::size_t j = 0; j < n; ++j) point.cost += point.x[i] * quadratic.curvature[i][j] * point.x[j] / 2;
    }
    return point;
}

std::set<std::size_t> used(const std::vector<double>& x) {
    std::set<std::size_t> variables;
    for (std::size_t v = 0; v < x.size(); ++v)
        if (x[v] > zero) variables.insert(v);
    return variables;
}

Found exact(const LeastSquares& problem, const std::set<std::size_t>& variables) {
    Choices choices(problem.charge.variables.size(), Choice::out);
    for (const auto v : variables) choices[v] = Choice::in;
    return {least(problem, choices).cost, variables};
}

bool allowed(const FixedCharge& charge, const std::set<std::size_t>& variables) {
    std::size_t counted = 0;
    for (const auto v : variables) counted += charge.variables[v].counted;
    if (charge.most_chosen > 0 && counted > charge.most_chosen) return false;
    return std::all_of(charge.exclusive.begin(), charge.exclusive.end(), [&](const auto& group) {
        return std::count_if(group.begin(), group.end(), [&](std::size_t v) { return variables.count(v) > 0; }) <= 1;
    });
}

class Search : public BranchAndBound<Point, Found> {
public:
    Search(const LeastSquares& problem, const BranchLimits& limits) : BranchAndBound(problem.charge, limits), problem_(problem) {}

private:
    std::vector<Node> roots() override {
        Node root{0, Choices(problem_.charge.variables.size(), Choice::open), {}};
        relax(root, {});
        return {root};
    }

    void relax(Node& node, const std::vector<double>&) override {
        node.relaxed = least(problem_, node.choices);
        count_relaxation();
    }

    std::optional<Found> answer_of(const Node& node) override {
        const auto variables = used(node.relaxed.x);
        if (!allowed(problem_.charge, variables) || !told_.insert(variables).second) return std::nullopt;
        return exact(problem_, variables);
    }

    const LeastSquares& problem_;
    std::set<std::set<std::size_t>> told_;
};

// Every set that its own least uses whole, cheapest first.
std::vector<Found> by_enumeration(const LeastSquares& problem) {
    std::vector<Found> all;
    for (std::size_t set = 0; set < std::size_t{1} << problem.charge.variables.size(); ++set) {
        std::set<std::size_t> variables;
        for (std::size_t v = 0; v < problem.charge.variables.size(); ++v)
            if (set >> v & 1U) variables.insert(v);
        if (!allowed(problem.charge, variables)) continue;
        Choices choices(problem.charge.variables.size(), Choice::out);
        for (const auto v : variables) choices[v] = Choice::in;
        if (used(least(problem, choices).x) == variables) all.push_back(exact(problem, variables));
    }
    std::sort(all.begin(), all.end(), [](const Found& a, const Found& b) { return a.cost < b.cost; });
    return all;
}

void compare(const LeastSquares& problem, std::size_t answers) {
    BranchLimits limits;
    limits.answers = answers;
    limits.slack = 1e-7;
    const auto found = Search(problem, limits).run();
    const auto all = by_enumeration(problem);
    CHECK(found.proved);
    CHECK_FALSE(found.stopped);
    REQUIRE(found.answers.size() == std::min(answers, all.size()));
    for (std::size_t a = 0; a < found.answers.size(); ++a) CHECK(found.answers[a].cost == Approx(all[a].cost).margin(1e-5));
}

TEST_CASE("the best answers of a fixed-charge problem are those of trying every set") {
    for (std::uint32_t seed = 0; seed < 60; ++seed) {
        INFO("seed " << seed);
        compare(random_problem(seed, 6), 1 + seed % 4);
    }
}

TEST_CASE("an answer uses one of the variables that exclude each other, and no more than may be chosen") {
    for (std::uint32_t seed = 0; seed < 60; ++seed) {
        INFO("seed " << seed);
        LeastSquares problem = random_problem(seed, 6);
        problem.charge.exclusive = {{0, 1, 2}, {3, 4}};
        compare(problem, 2);
        problem.charge.most_chosen = 2;
        problem.charge.variables[5].counted = false;
        compare(problem, 2);
    }
}

TEST_CASE("most of the sets are never looked at") {
    const LeastSquares problem = random_problem(7, 12);
    BranchLimits limits;
    const auto found = Search(problem, limits).run();
    CHECK(found.proved);
    CHECK(found.visited < 400);  // of 4096
}

TEST_CASE("a search that may not look far says that it has proved nothing, and what was left") {
    const LeastSquares problem = random_problem(7, 12);
    BranchLimits limits;
    const auto whole = Search(problem, limits).run();
    limits.nodes = 4;
    const auto short_of = Search(problem, limits).run();
    CHECK_FALSE(short_of.proved);
    CHECK(short_of.visited < whole.visited);
    CHECK(short_of.least_left <= whole.answers.front().cost);
    CHECK(short_of.least_left > 0);
}

TEST_CASE("the caller of a search may stop it") {
    std::size_t calls = 0;
    double last = 0;
    BranchLimits limits;
    limits.progress = [&](std::size_t, double best) {
        last = best;
        return ++calls < 3;
    };
    const auto found = Search(random_problem(7, 12), limits).run();
    CHECK(found.stopped);
    CHECK(calls == 3);
    CHECK(std::isfinite(last));
}

TEST_CASE("rounding takes what is used plainly, and of rivals the most used") {
    FixedCharge charge;
    charge.variables = {{1, 1, true}, {1, 1, true}, {2, 1, true}, {1, 1, true}};
    charge.exclusive = {{0, 1}};
    const Branching branching(charge);
    const Choices open(4, Choice::open);
    const std::vector<double> values{0.3, 0.6, 0.08, 0.06};
    CHECK(branching.rounded(open, values, 0.05) == Choices{Choice::out, Choice::in, Choice::out, Choice::in});
    Choices chosen = open;
    chosen[0] = Choice::in;
    CHECK(branching.rounded(chosen, values, 0.05) == Choices{Choice::in, Choice::out, Choice::out, Choice::in});
}

TEST_CASE("a node is split on the variable whose price is furthest from paid, and at last on the cheapest") {
    FixedCharge charge;
    charge.variables = {{1, 1, true}, {1, 3, true}, {1, 0.5, true}, {0, 0.1, true}};
    const Branching branching(charge);
    Choices choices(4, Choice::open);
    CHECK(branching.most_fractional(choices, {0.1, 0.8, 0.1, 0}) == 0);  // 0.9 unpaid against 0.6 and 0.45
    CHECK(branching.most_fractional(choices, {0, 0, 0, 0}) == std::nullopt);
    CHECK(branching.is_unused(0, {1e-4, 0, 0, 0}));
    CHECK_FALSE(branching.is_unused(0, {1e-2, 0, 0, 0}));
    CHECK(branching.cheapest_open(choices) == 2);  // the last cannot be used at all
    choices[2] = Choice::out;
    CHECK(branching.cheapest_open(choices) == 0);
    CHECK(branching.cheapest_open(Choices(4, Choice::in)) == std::nullopt);
}

}  // namespace branch_and_bound_test
