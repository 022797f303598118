#include "adapt/moves/doubtful.hpp"

#include <algorithm>

#include "core/has_food.hpp"

namespace standin {
namespace {

bool comes_in_doubtful(const Line& food, const Problem& problem, const Stock& stock) {
    return stock.in_doubt(food.ingredient) && !has_food(problem.formula, food.ingredient);
}

}  // namespace

bool is_doubtful(const Candidate& candidate, const Problem& problem, const Stock& stock) {
    const bool beside = candidate.partner && candidate.partner->named && comes_in_doubtful(candidate.partner->food, problem, stock);
    return beside || comes_in_doubtful(candidate.food, problem, stock);
}

bool has_sure_stand_in(const Problem& problem, std::size_t l, const Stock& stock) {
    const double most_of_it = stock.knowledge().parameter("advice.doubt.sure-share").mid;
    const double grams = problem.formula.lines[l].grams.mid, missing = grams - problem.start[l];
    return std::any_of(problem.moves.begin(), problem.moves.end(), [&](const Move& move) {
        if (move.kind != MoveKind::stand_in || move.line != l || comes_in_doubtful(move.food, problem, stock)) return false;
        return move.most * move.covers->per_gram * grams >= most_of_it * missing;
    });
}

}  // namespace standin
