#include "adapt/search/signature.hpp"

#include <algorithm>

namespace standin {

Signature signature_of(const Problem& problem, const std::vector<std::size_t>& moves) {
    Signature signature;
    for (const auto m : moves) {
        const Move& move = problem.moves[m];
        if (move.trim) continue;
        if (move.brings_food()) signature.foods.insert(m);
        else signature.lines.emplace(move.kind, move.role);
    }
    return signature;
}

Relation relation(const Problem& problem, const Signature& more, const Signature& less) {
    if (less.empty()) return more.empty() ? Relation::includes : Relation::different;
    bool equivalent = false;
    for (const auto food : less.foods) {
        if (more.foods.count(food)) continue;
        const auto& others = problem.moves[food].equivalents;
        if (std::none_of(others.begin(), others.end(), [&](std::size_t m) { return more.foods.count(m) && !less.foods.count(m); }))
            return Relation::different;
        equivalent = true;
    }
    // Foods beside lines that do without say something else; lines beside lines only where they are others.
    const bool all_lines = std::includes(more.lines.begin(), more.lines.end(), less.lines.begin(), less.lines.end());
    if (less.foods.empty() && (!more.foods.empty() || !all_lines)) return Relation::different;
    return equivalent ? Relation::equivalent : Relation::includes;
}

}  // namespace standin
