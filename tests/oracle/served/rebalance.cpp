// A rebalancing problem served over a pipe, so that solvers elsewhere can work on the very same models. Called with numbers of random
// problems. For each it prints one line of JSON: prices, lower bounds (upper bounds are 1), and our own optimum. Then it reads one
// vector of scaled grams a line and answers with a line "square price breach...", until an empty line leads to the next problem.
#include <cmath>
#include <cstdio>
#include <iostream>
#include <sstream>

#include "adapt/search/descent.hpp"
#include "oracle/small_problem.hpp"

namespace {

std::string list_of(const std::vector<double>& values) {
    std::string text;
    char number[40];
    for (const double v : values) {
        if (std::isfinite(v)) std::snprintf(number, sizeof number, "%.17g", v);
        else std::snprintf(number, sizeof number, "NaN");  // far outside its bounds a solver may ask for no batch at all
        text += (text.empty() ? "" : ", ") + std::string(number);
    }
    return "[" + text + "]";
}

void serve(std::uint64_t number) {
    using namespace standin;
    constexpr std::size_t most_moves = 6;
    const SmallProblem small(number, most_moves);
    const std::vector<Choice> choices(small.problem.moves.size(), Choice::open);
    const Subproblem subproblem(small.problem, small.problem.hard, small.distance(), small.models(), small.problem.processes.front(),
                                choices);
    const Rebalancer rebalancer(small.problem, small.distance(), small.models());
    const ProcessOption& process = small.problem.processes.front();
    const Solution ours = rebalancer.polished(choices, process, rebalancer.solve(choices, process, {}));
    std::cout << "{\"problem\": " << number << ", \"prices\": " << list_of(subproblem.prices())
              << ", \"least\": " << list_of(subproblem.least()) << ", \"y\": " << list_of(subproblem.scaled(ours.grams))
              << ", \"cost\": " << list_of({ours.cost, ours.violation}) << "}" << std::endl;
    for (std::string line; std::getline(std::cin, line) && !line.empty();) {
        std::istringstream in(line);
        std::vector<double> y(subproblem.size());
        for (auto& v : y) in >> v;
        const Iterate there = subproblem.at(std::move(y));
        std::vector<double> answer{there.square, there.price};
        answer.insert(answer.end(), there.violations.begin(), there.violations.end());
        std::cout << list_of(answer) << std::endl;
    }
}

}  // namespace

int main(int argc, char** argv) {
    for (int i = 1; i < argc; ++i) serve(std::stoull(argv[i]));
}
