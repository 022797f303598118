#include "optimize/branching.hpp"

#include <algorithm>
#include <utility>

namespace standin {

namespace {

constexpr double unused_share = 1e-3;  // of a variable's most; solver tolerance

}  // namespace

Branching::Branching(FixedCharge problem) : problem_(std::move(problem)), excluded_by_(problem_.variables.size()) {
    for (const auto& group : problem_.exclusive)
        for (const auto a : group)
            for (const auto b : group)
                if (a != b) excluded_by_[a].push_back(b);
}

double Branching::share(std::size_t variable, const std::vector<double>& values) const {
    return values[variable] / std::max(problem_.variables[variable].most, 1e-12);
}

bool Branching::too_many(const Choices& choices) const {
    if (problem_.most_chosen == 0) return false;
    std::size_t count = 0;
    for (std::size_t v = 0; v < choices.size(); ++v) count += choices[v] == Choice::in && problem_.variables[v].counted;
    return count > problem_.most_chosen;
}

void Branching::shut_excluded(Choices& choices, std::size_t chosen) const {
    for (const auto other : excluded_by_[chosen])
        if (choices[other] == Choice::open) choices[other] = Choice::out;
}

std::optional<std::size_t> Branching::most_fractional(const Choices& choices, const std::vector<double>& values) const {
    std::optional<std::size_t> best;
    double most = 0;
    for (std::size_t v = 0; v < choices.size(); ++v) {
        if (choices[v] != Choice::open || share(v, values) < unused_share) continue;
        const double unpaid = problem_.variables[v].price * (1 - share(v, values)) + 1e-9;
        if (unpaid > most) {
            most = unpaid;
            best = v;
        }
    }
    return best;
}

bool Branching::is_unused(std::size_t variable, const std::vector<double>& values) const {
    return values[variable] < unused_share * problem_.variables[variable].most;
}

std::optional<std::size_t> Branching::cheapest_open(const Choices& choices) const {
    std::optional<std::size_t> best;
    for (std::size_t v = 0; v < choices.size(); ++v)
        if (choices[v] == Choice::open && problem_.variables[v].most > 0 &&
            (!best || problem_.variables[v].price < problem_.variables[*best].price))
            best = v;
    return best;
}

Choices Branching::rounded(Choices choices, const std::vector<double>& values, double used) const {
    for (std::size_t v = 0; v < choices.size(); ++v) {
        if (choices[v] != Choice::open) continue;
        for (const auto other : excluded_by_[v])
            if (choices[other] == Choice::in || (choices[other] == Choice::open && share(other, values) > share(v, values)))
                choices[v] = Choice::out;
        if (choices[v] == Choice::open && share(v, values) > used) shut_excluded(choices, v);
    }
    for (std::size_t v = 0; v < choices.size(); ++v)
        if (choices[v] == Choice::open) choices[v] = values[v] > used * problem_.variables[v].most ? Choice::in : Choice::out;
    return choices;
}

}  // namespace standin
