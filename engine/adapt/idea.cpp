#include "adapt/idea.hpp"

#include <algorithm>

namespace standin {

Idea idea_of(const Problem& problem, const std::vector<std::size_t>& moves) {
    Idea idea;
    for (const auto m : moves) {
        const Move& move = problem.moves[m];
        if (move.trim) continue;
        if (move.brings_food()) idea.foods.insert(m);
        else idea.lines.emplace(move.kind, move.role);
    }
    return idea;
}

Likeness likeness(const Problem& problem, const Idea& more, const Idea& less) {
    if (less.empty()) return more.empty() ? Likeness::dusted : Likeness::different;
    bool kin = false;
    for (const auto food : less.foods) {
        if (more.foods.count(food)) continue;
        const auto& others = problem.moves[food].kin;
        if (std::none_of(others.begin(), others.end(), [&](std::size_t m) { return more.foods.count(m) && !less.foods.count(m); }))
            return Likeness::different;
        kin = true;
    }
    // Foods beside lines that do without are an idea; lines beside lines only where they are others.
    const bool all_lines = std::includes(more.lines.begin(), more.lines.end(), less.lines.begin(), less.lines.end());
    if (less.foods.empty() && (!more.foods.empty() || !all_lines)) return Likeness::different;
    return kin ? Likeness::kin : Likeness::dusted;
}

}  // namespace standin
