// What a plan comes down to. What comes into the formula decides: two plans that bring the same foods, or foods that are kin, are one idea,
// however they shift the lines there are. Where nothing comes in, the lines decide, by role: less vinegar here and less verjuice there
// is less acid both times. Trims do not count.
#pragma once

#include <set>
#include <utility>
#include <vector>

#include "adapt/problem.hpp"

namespace standin {

struct Idea {
    std::set<std::size_t> foods;                ///< moves that bring something in
    std::set<std::pair<MoveKind, Role>> lines;  ///< reduce or raise, and the role of the line

    bool empty() const { return foods.empty() && lines.empty(); }
};

/// Of the moves of a plan, or of those that a node has chosen already.
Idea idea_of(const Problem& problem, const std::vector<std::size_t>& moves);

/// How one plan stands to a nearer one.
enum class Likeness {
    different,
    dusted,  ///< the same, or with more beside what does already: the shorter one is to be preferred
    kin      ///< as before, but with other foods of the same kind in place of some
};

/// Bringing in a food where none came in before is an idea of its own, and so is anything beside changing nothing.
Likeness likeness(const Problem& problem, const Idea& more, const Idea& less);

}  // namespace standin
