#include "adapt/moves/own_water.hpp"

#include <algorithm>

#include "adapt/moves/fair_moves.hpp"
#include "knowledge/records/tissue.hpp"

namespace standin {
namespace {

constexpr double is_wet = 0.5;    // g water in a gram; judgement, as the rest
constexpr double goes_off = 0.5;  // of the water that comes in: the rest lies in the grain
constexpr double may_go = 0.6;    // of a liquid

const Ingredient& food_for_water(const Line& line, const Context& context) { return *context.knowledge().ingredient(line.ingredient); }

// Water, stock, milk: it is there to wet the mass.
bool is_plain_liquid(const Line& line, const Context& context) {
    const Ingredient& food = food_for_water(line, context);
    const Material unit = context.nominal().unit(line);
    return food.roles.front() == Role::liquid && unit[Amount::water] > is_wet && unit[Amount::titratable] < 0.1 * unit[Amount::water];
}

bool comes_in_for_liquid(const Problem& problem, const Move& move, const Context& context) {
    return move.kind == MoveKind::stand_in && problem.missing[move.line] && is_plain_liquid(problem.formula.lines[move.line], context);
}

}  // namespace

double own_water(const Problem& problem, const Move& move, const Context& context) {
    if (move.kind != MoveKind::stand_in || !problem.missing[move.line] || move.role != Role::binder) return 0;
    const Line& line = problem.formula.lines[move.line];
    const bool for_dry = food_for_water(line, context).tissue == Tissue::dry && food_for_water(move.food, context).tissue != Tissue::dry;
    return for_dry && move.per_gram[Amount::water] > is_wet ? move.per_gram[Amount::water] : 0;
}

void take_water_off(Problem& problem, const Context& context) {
    const auto brings = [&](const Move& move) { return own_water(problem, move, context) > 0; };
    if (std::none_of(problem.moves.begin(), problem.moves.end(), brings)) return;
    for (auto& move : problem.moves)  // so much of what comes in for milk may stay out
        if (comes_in_for_liquid(problem, move, context)) move.least = std::min(move.least, (1 - may_go) * move.most);
    std::optional<std::size_t> biggest;
    for (std::size_t l = 0; l < problem.formula.lines.size(); ++l) {
        const Line& line = problem.formula.lines[l];
        if (line.keep || problem.missing[l] || !is_plain_liquid(line, context)) continue;
        if (!biggest || line.grams.mid > problem.formula.lines[*biggest].grams.mid) biggest = l;
    }
    const auto goes = [&](const Move& move) { return move.kind == MoveKind::reduce && move.line == *biggest; };
    if (!biggest || std::any_of(problem.moves.begin(), problem.moves.end(), goes)) return;
    problem.moves.push_back(trim_of(problem, *biggest, Role::liquid, may_go, context));
}

bool takes_water_off(const Problem& problem, const Move& move) { return trims(problem, move, Role::liquid); }

std::optional<LinearConstraint> water_follows(const Problem& problem, const Context& context) {
    double comes = 0, may = 0, missing = 0;
    std::vector<bool> counted(problem.formula.lines.size());
    for (const auto& move : problem.moves) {
        if (const double water = own_water(problem, move, context); water > 0)
            comes = std::max(comes, water * std::min(move.most, 1 / move.covers->per_gram));
        if (takes_water_off(problem, move)) may += move.most;
        if (!comes_in_for_liquid(problem, move, context) || counted[move.line]) continue;
        counted[move.line] = true;
        const double line = problem.formula.lines[move.line].grams.mid - problem.start[move.line];
        missing += line;
        may += may_go * line;
    }
    if (!(comes > 0) || !(may > 0)) return std::nullopt;
    const double share = std::min(goes_off, 0.9 * may / comes);
    LinearConstraint limit{{}, missing, std::max(1.0, missing)};
    for (const auto& move : problem.moves)
        limit.per_gram.push_back(takes_water_off(problem, move)                ? -1
                                 : comes_in_for_liquid(problem, move, context) ? 1
                                                                               : share * own_water(problem, move, context));
    return limit;
}

}  // namespace standin
