#include "adapt/moves/salt_follows.hpp"

#include <algorithm>

#include "knowledge/index/kinds.hpp"

namespace standin {
namespace {

constexpr double salted_food = 0.005;  // g NaCl in a gram; what brings that much is salty food; judgement

const Ingredient& food_of(const Line& line, const Context& context) { return *context.knowledge().ingredient(line.ingredient); }

bool brings_salt(const Move& m, const Context& context) {
    return !plain_salt(food_of(m.food, context), context.knowledge()) && m.per_gram[Amount::salt] >= salted_food * m.per_gram[Amount::mass];
}

// Other meat for what is missing weighs more or less than that, and the salt is weighed to it.
bool replaces_meat(const Problem& problem, const Move& move, const Context& context) {
    const bool was_meat = food_of(problem.formula.lines[move.line], context).meat.has_value();
    return move.kind == MoveKind::stand_in && problem.missing[move.line] && (move.per_gram[Amount::meat] != 0 || was_meat);
}

// Grams of salt that are missing with the line, other than the salt itself.
double salt_gone(const Problem& problem, std::size_t l, const Context& context) {
    const Line& line = problem.formula.lines[l];
    if (!problem.missing[l] || plain_salt(food_of(line, context), context.knowledge())) return 0;
    return (line.grams.mid - problem.start[l]) * context.nominal().unit(line)[Amount::salt];
}

}  // namespace

bool plain_salt(const Ingredient& food, const Knowledge& knowledge) {
    return belongs(food, "salt", knowledge) && food.roles.size() == 1;  // garlic salt is there for its garlic
}

bool salt_follows(const Problem& problem, const Distance& distance, const Context& context) {
    constexpr double all = 0.95;  // of the meat: where less is allowed, fat goes and nothing comes in for it
    const bool of_fat = asks_leaner(distance.goals()) || asks_richer(distance.goals());
    if (of_fat && problem.least_meat < all * problem.start_total[Amount::meat]) return true;
    for (const auto& move : problem.moves)
        if (move.brings_food() && (brings_salt(move, context) || replaces_meat(problem, move, context))) return true;
    for (std::size_t l = 0; l < problem.start.size(); ++l)  // much bread takes along what a maker would weigh in again
        if (salt_gone(problem, l, context) > context.constant("advice.salt.held") * distance.base_material()[Amount::salt]) return true;
    return false;
}

double salt_share(const Problem& problem, std::size_t l, double trim, double slack, const Context& context) {
    double gone = 0;
    for (std::size_t other = 0; other < problem.start.size(); ++other) gone += salt_gone(problem, other, context);
    const Line& line = problem.formula.lines[l];
    return std::max(trim, slack * gone / std::max(context.nominal().unit(line)[Amount::salt] * line.grams.mid, 1e-9));
}

}  // namespace standin
