#include "adapt/doubtful.hpp"

#include <algorithm>

namespace standin {
namespace {

constexpr double most_of_it = 0.5;  // of what is missing; judgement

bool comes_in_doubtful(const Line& food, const Problem& problem, const Stock& stock) {
    const auto& lines = problem.formula.lines;
    return stock.in_doubt(food.ingredient) &&
           std::none_of(lines.begin(), lines.end(), [&](const Line& line) { return line.ingredient == food.ingredient; });
}

}  // namespace

bool is_doubtful(const Candidate& candidate, const Problem& problem, const Stock& stock) {
    const bool beside = candidate.partner && candidate.partner->named && comes_in_doubtful(candidate.partner->food, problem, stock);
    return beside || comes_in_doubtful(candidate.food, problem, stock);
}

bool has_sure_stand_in(const Problem& problem, std::size_t l, const Stock& stock) {
    const double grams = problem.formula.lines[l].grams.mid, missing = grams - problem.start[l];
    return std::any_of(problem.moves.begin(), problem.moves.end(), [&](const Move& move) {
        if (move.kind != MoveKind::stand_in || move.line != l || comes_in_doubtful(move.food, problem, stock)) return false;
        return move.most * move.covers->per_gram * grams >= most_of_it * missing;
    });
}

}  // namespace standin
