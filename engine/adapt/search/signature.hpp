// The signature of a plan: what it comes down to. What comes into the formula decides: two plans that bring the same foods, or equivalent
// ones (equivalents.hpp), are one idea, however they shift the lines there are. Where nothing comes in, the lines decide, by role: less
// vinegar here and less verjuice there is less acid both times. Trims do not count.
#pragma once

#include <set>
#include <utility>
#include <vector>

#include "adapt/moves/problem.hpp"

namespace standin {

struct Signature {
    std::set<std::size_t> foods;                ///< moves that bring something in
    std::set<std::pair<MoveKind, Role>> lines;  ///< reduce or raise, and the role of the line

    bool empty() const { return foods.empty() && lines.empty(); }
};

/// Of the moves of a plan, or of those that a node has chosen already.
Signature signature_of(const Problem& problem, const std::vector<std::size_t>& moves);

/// How one plan stands to a nearer one.
enum class Relation {
    different,
    includes,   ///< the same, or with more beside what does already: the shorter one is to be preferred
    equivalent  ///< as before, but with other foods of the same kind in place of some
};

/// Bringing in a food where none came in before is an idea of its own, and so is anything beside changing nothing.
Relation relation(const Problem& problem, const Signature& more, const Signature& less);

}  // namespace standin
