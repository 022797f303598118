#include "adapt/moves/fat_back.hpp"

#include <algorithm>

#include "adapt/goals/wants.hpp"

namespace standin {

double fat_lost_with_lean(const Problem& problem, const Stock& stock, const Distance& distance, const Context& context) {
    constexpr double clearly = 0.04;  // g/g of fat between the cuts; judgement
    if (!stock.listed() || asks_leaner(distance.goals())) return 0;
    double lost = 0;
    for (std::size_t l = 0; l < problem.formula.lines.size(); ++l) {
        const Line& line = problem.formula.lines[l];
        const Ingredient& own = *context.knowledge().ingredient(line.ingredient);
        if (!problem.missing[l] || !own.meat || own.roles.front() != Role::lean) continue;
        const double was = context.nominal().unit(line)[Amount::fat];
        double less = 0;
        for (const auto& move : problem.moves)
            if (move.kind == MoveKind::stand_in && move.line == l && move.role == Role::lean)
                less = std::max(less, was - move.per_gram[Amount::fat]);
        if (less > clearly) lost += less * (line.grams.mid - problem.start[l]);
    }
    return lost;
}

void make_room_for_fat(Problem& problem, double lost, const Stock& stock) {
    for (auto& move : problem.moves) {
        const double fat = move.per_gram[Amount::fat];
        if (move.kind != MoveKind::stand_in || !problem.missing[move.line] || move.role != Role::fat || !(fat > 0)) continue;
        const Offer offer = stock.offer(move.food);
        if (!offer.grams) move.most += lost / fat;
        else move.most = std::max(move.most, std::min(*offer.grams, move.most + lost / fat));
    }
}

bool brings_fat_beside(const Candidate& candidate, const Knowledge& knowledge) {
    return candidate.role == Role::lean && candidate.in_two_parts() &&
           knowledge.ingredient(candidate.partner->food.ingredient)->roles.front() == Role::fat;
}

}  // namespace standin
