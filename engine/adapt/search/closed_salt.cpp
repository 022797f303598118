#include "adapt/search/closed_salt.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

#include "adapt/moves/salt_follows.hpp"

namespace standin {
namespace {

// Salty to taste: cheese, olives and sauces, not bread.
bool salty_food(const Material& per_gram, const Context& context) {
    return per_gram[Amount::salt] >= context.constant("advice.salt.salty") * per_gram[Amount::mass];
}

// Whether `grams` of plain salt are moved where `share` of the salt is off; `salty`: something salty came in or went, which a maker has in
// mind.
bool worth_salting(double grams, double share, bool salty, const Context& context) {
    constexpr double much = 0.1;  // of the salt: of a small batch that is weighed too; judgement
    if (share < context.constant("advice.salt.off-least")) return false;
    const double least = context.constant(salty ? "advice.trim.least_grams" : "advice.salt.grams-least");
    return grams >= least || share >= much;
}

bool is_salty_line(const Line& line, const Context& context) {
    const Ingredient& food = *context.knowledge().ingredient(line.ingredient);
    return !plain_salt(food, context.knowledge()) && salty_food(context.nominal().unit(line), context);
}

// Something salty comes in, or goes, with what the plan uses.
bool moves_salty_food(const Plan& plan, const Problem& problem, const Context& context) {
    for (const auto m : used_moves(problem, plan.grams)) {
        const Move& move = problem.moves[m];
        if (!move.trim && is_salty_line(move.food, context)) return true;
        if (move.second && is_salty_line(move.second->food, context)) return true;
    }
    for (std::size_t l = 0; l < problem.start.size(); ++l)
        if (problem.missing[l] && is_salty_line(problem.formula.lines[l], context)) return true;
    return false;
}

bool is_salt_trim(const Move& move, const Context& context) {
    return move.trim && plain_salt(*context.knowledge().ingredient(move.food.ingredient), context.knowledge());
}

// Oil for back fat: it is salted as the fat was, though it is no meat.
double salted_as_meat(const Move& move, const Problem& problem, const Context& context) {
    if (move.kind != MoveKind::stand_in || move.into || !move.covers || !problem.missing[move.line] || move.per_gram[Amount::meat] > 0)
        return 0;
    const Line& line = problem.formula.lines[move.line];
    return move.covers->per_gram * line.grams.mid * context.nominal().unit(line)[Amount::meat];
}

}  // namespace

Plan with_salt_closed(const Plan& plan, const Problem& problem, const Distance& distance, const Context& context) {
    std::optional<std::size_t> lower, raise;  // the biggest line of salt, either way
    Material total = problem.start_total;
    double salted = total[Amount::meat];
    for (std::size_t m = 0; m < problem.moves.size(); ++m) {
        const Move& move = problem.moves[m];
        if (!is_salt_trim(move, context)) {
            total.add(move.per_gram, plan.grams[m]);
            salted += (move.per_gram[Amount::meat] + salted_as_meat(move, problem, context)) * plan.grams[m];
            continue;
        }
        auto& best = move.kind == MoveKind::reduce ? lower : raise;
        if (!best || problem.moves[*best].most < move.most) best = m;
    }
    const Material& base = distance.base_material();
    if ((!lower && !raise) || !(base[Amount::meat] > 0)) return plan;
    const double asked = base[Amount::salt] / base[Amount::meat] * salted, missing = asked - total[Amount::salt];
    Plan closed = plan;
    for (std::size_t m = 0; m < problem.moves.size(); ++m) {
        if (!is_salt_trim(problem.moves[m], context)) continue;
        if (closed.grams[m] > 0) {
            closed.cost -= problem.moves[m].price;
            closed.price -= problem.moves[m].price;
        }
        closed.grams[m] = 0;
    }
    const auto& way = missing < 0 ? lower : raise;
    if (!way) return closed;
    const Move& move = problem.moves[*way];
    const double grams = std::min(move.most, std::abs(missing / move.per_gram[Amount::salt]));
    if (!worth_salting(grams, std::abs(missing) / asked, moves_salty_food(plan, problem, context), context)) return closed;
    closed.grams[*way] = grams;
    closed.cost += move.price;
    closed.price += move.price;
    return closed;
}

}  // namespace standin
