// What the stand-ins of a missing line are held to once all of them are known: a maker takes the nearest thing that is there, as much of
// it as is missing, and leaves the other lines alone.
#pragma once

#include "adapt/moves/food_price.hpp"
#include "adapt/moves/problem.hpp"

namespace standin {

/// What a gram of it takes away with it.
inline Material negated(const Material& unit) {
    Material minus;
    minus.add(unit, -1);
    return minus;
}

/// Holds the moves of `problem` to that; `asked`: whether a want moves lines as well, so that more than what is missing may be called for.
void hold_to_what_is_missing(Problem& problem, bool asked, const Stock& stock, const FoodPrice& price, const Context& context);

/// The lean that may go where a cut of fat and lean comes in for fat: a move for the biggest lean line.
void take_lean_off(Problem& problem, const Context& context);

/// Fat that is missing as `line`, and comes with lean as `move`: the lean, in grams of a gram. Nothing for other moves.
double lean_brought(const Problem& problem, const Move& move, const Context& context);

/// Whether `move` takes lean off for such a cut.
bool takes_lean_off(const Problem& problem, const Move& move);

/// Up to `share` of line `l` out, for what comes in elsewhere and brings of the same.
Move trim_of(const Problem& problem, std::size_t l, Role role, double share, const Context& context);

/// Whether `move` is such a one, of that role.
bool trims(const Problem& problem, const Move& move, Role role);

}  // namespace standin
