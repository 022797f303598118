#include "adapt/moves/sour_pour.hpp"

#include <algorithm>

namespace standin {
namespace {

// Milk that soured is there for its milk.
bool pours_sour(const Line& line, const Context& context) {
    constexpr double sour = 0.05;  // mmol/g: wine and orange juice are, stock is not; judgement
    const Ingredient& food = *context.knowledge().ingredient(line.ingredient);
    const Role role = food.roles.front();
    if (food.tissue != Tissue::liquid || food.family == "dairy-and-egg" || (role != Role::acid && role != Role::liquid)) return false;
    return context.nominal().unit(line)[Amount::titratable] >= sour;
}

}  // namespace

std::optional<LinearConstraint> sour_pour_limit(const Problem& problem, const Context& context) {
    const double share = context.constant("advice.most.sour-pour");
    double before = 0, start = 0, mass = 0;
    for (std::size_t l = 0; l < problem.formula.lines.size(); ++l) {
        const Line& line = problem.formula.lines[l];
        mass += context.nominal().unit(line)[Amount::mass] * line.grams.mid;
        if (!pours_sour(line, context)) continue;
        before += line.grams.mid;
        start += problem.start[l];
    }
    // Of the maker's own a little more is poured, as far as any kilo takes it.
    constexpr double a_third_more = 1.33, at_the_very_most = 1.35;  // times what there is, times the share; judgement
    const double own = std::max(before, std::min(a_third_more * before, at_the_very_most * share * mass));
    LinearConstraint limit{{}, std::max(share * mass, own) - start, std::max(1.0, share * mass)};
    bool comes = false;
    for (const auto& move : problem.moves) {
        const double sign = move.kind == MoveKind::reduce ? -1 : 1;
        double poured = pours_sour(move.food, context) ? sign : 0;
        if (move.second && pours_sour(move.second->food, context)) poured += move.second->per_gram;
        comes = comes || poured > 0;
        limit.per_gram.push_back(poured);
    }
    if (!comes) return std::nullopt;
    limit.is_cap = true;
    return limit;
}

}  // namespace standin
