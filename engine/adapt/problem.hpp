// A request as a problem: a starting batch and the moves that may be made on it. Every property depends on the sum of materials, and a
// move adds its grams times a fixed material to that sum, so the problem is linear up to the models.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "adapt/yardstick.hpp"
#include "knowledge/swap_graph.hpp"
#include "substitute/stock.hpp"

namespace standin {

enum class MoveKind { reduce, raise, stand_in, add };

/// A line that a stand-in may stand for.
struct StandsFor {
    std::size_t line = 0;
    double closeness = 0;
    double equal_grams = 0;  ///< grams of the stand-in that carry the line's whole dose
    Role role = Role::green;
    std::vector<std::size_t> swaps;  ///< indexes in Records::swaps
};

struct Move {
    MoveKind kind = MoveKind::reduce;
    std::size_t line = 0;  ///< reduce, raise: the formula's line
    Line food;             ///< stand_in, add: what comes in, with its preparations
    std::vector<StandsFor> stands_for;
    Material per_gram;             ///< of the batch, negative for reduce
    double most = 0;               ///< grams
    double price = 0;              ///< noticeable differences once it is used
    bool trim = false;             ///< salt or water following the rest: no edit of its own in a plan's idea
    Role role = Role::green;       ///< main role of the food or of the line
    std::vector<std::size_t> kin;  ///< other moves that would do as well (kin.hpp)
    double bought = 1;             ///< grams as picked or bought behind one gram of it

    /// Whether a food comes in by it; the other moves change lines that are there.
    bool brings_food() const { return kind == MoveKind::stand_in || kind == MoveKind::add; }
};

/// Grams of some moves that together must stay under a limit: one ingredient in several forms, or all binders.
struct Limit {
    std::vector<std::size_t> moves;
    double grams = 0;
    bool as_bought = false;  ///< grams as picked or bought, not as weighed
};

/// One change of the making, with what to do in words.
struct ProcessChange {
    enum class About { order, mixing, cold, plate, rest, rest_cold, core } about = About::order;
    std::string what;
};

/// A way of making the batch, and what it changes.
struct ProcessOption {
    Process process;
    ProcessState state;  // at the middle
    std::vector<ProcessChange> changes;
    double price = 0;
};

struct Problem {
    Formula formula;
    std::vector<double> start;   ///< grams of each line before any move; less than the formula's where it is not to be had
    std::vector<bool> forced;    ///< lines whose start is below the formula's
    std::vector<bool> excluded;  ///< lines that the maker wants to be without
    Material start_total;
    std::vector<Move> moves;
    std::vector<Limit> limits;
    std::vector<ProcessOption> processes;
    double least_meat = 0;   ///< g
    double least_salt = 0;   ///< % of the batch
    std::vector<Goal> hard;  ///< limits no plan may break: conditions, and word wants as far as all of them can be met
};

/// The goals as limits: conditions as they are, words at their target less the slack within which they count as met.
std::vector<Goal> hard_goals(const Yardstick& yardstick);

/// % of the batch that salt is held above when nothing is wanted of it: it follows the rest, but is never let go to undo what the rest does
/// to the bind. `start` is the batch before any move.
double held_salt(const Yardstick& yardstick, const Material& start);

/// Everything that may be done about `formula`, with every goal as a hard limit. Lines marked keep have no moves.
Problem make_problem(const Formula& formula, const Stock& stock, const SwapGraph& graph, const Yardstick& yardstick,
                     const Context& context);

}  // namespace standin
