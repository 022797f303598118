// A request as a problem: a starting batch and the moves that may be made on it. Every property depends on the sum of materials, and a
// move adds its grams times a fixed material to that sum, so the problem is linear up to the models.
#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "adapt/distance/asked_roles.hpp"
#include "adapt/distance/distance.hpp"
#include "knowledge/index/swap_graph.hpp"
#include "substitute/stock.hpp"

namespace standin {

enum class MoveKind { reduce, raise, stand_in, add };

/// A line that a stand-in may stand for.
struct StandsFor {
    std::size_t line = 0;
    double closeness = 0;
    double equal_grams = 0;  ///< grams of the stand-in that take the place of the whole line
    Role role = Role::green;
    std::vector<std::size_t> swaps;  ///< indexes in Records::swaps
};

/// How much of a line a gram of a move takes away (negative) or makes up for.
struct Covers {
    std::size_t line = 0;
    double per_gram = 0;  ///< share of the line as the formula has it
};

/// What comes in with each gram of a stand-in in two parts: cinnamon with clove for allspice.
struct SecondPart {
    Line food;
    Reason why;  ///< "softens the clove"
    double per_gram = 0;
    std::optional<std::size_t> into{};  ///< the line of the formula that is raised by it
    double bought = 1;                  ///< grams as picked or bought behind one gram of it
};

/// What makes up only for what another stand-in leaves of a line.
struct RestOf {
    std::size_t move = 0;
    double times = 0;  ///< of what that covers, the most it may cover
};

struct Move {
    MoveKind kind = MoveKind::reduce;
    std::size_t line = 0;                     ///< reduce, raise: the formula's line; stand_in: the line it stands for
    Line food;                                ///< stand_in, add: what comes in, with its preparations
    std::vector<StandsFor> stands_for;        ///< stand_in: one
    Material per_gram;                        ///< of the batch, negative for reduce
    double most = 0;                          ///< grams
    double price = 0;                         ///< squared noticeable differences once it is used
    bool trim = false;                        ///< salt or water following the rest: no edit of its own in a plan's idea
    Role role = Role::green;                  ///< main role of the food or of the line
    std::vector<std::size_t> equivalents{};   ///< other moves that would do as well (equivalents.hpp)
    double least = 0;                         ///< grams; a move that is used at all moves at least so much
    std::optional<std::size_t> into{};        ///< stand_in: the line of the formula that is raised to make up for the other
    std::optional<std::size_t> partner_of{};  ///< add: the line whose stand-in it makes up for
    std::optional<Covers> covers{};
    double remnant = 0;                  ///< reduce: of the line's grams, so little is not left
    double bought = 1;                   ///< grams as picked or bought behind one gram of it
    std::optional<SecondPart> second{};  ///< stand_in
    std::optional<RestOf> rest_of{};     ///< stand_in
    bool fills = false;                  ///< stand_in: it takes the place of a vegetable as a vegetable does

    /// Grams of an ingredient that a gram of it brings; as bought where `as_bought` says so.
    double brings(std::string_view ingredient, bool as_bought = false) const;

    /// Whether a food comes in by it; the other moves change lines that are there.
    bool brings_food() const { return kind == MoveKind::stand_in || kind == MoveKind::add; }
};

/// A linear limit on the grams of the moves: what they use must not be more than the room there is.
struct LinearConstraint {
    std::vector<double> per_gram;  ///< one a move
    double room = 0;
    double scale = 1;     ///< what one unit of breach is
    bool is_cap = false;  ///< of what a kilo of the batch takes of a food, or the law allows

    double violation(const std::vector<double>& grams) const;
};

/// A way of making the batch, and what it changes.
struct ProcessOption {
    Process process;
    ProcessState state;           // at the middle
    std::vector<Reason> changes;  ///< what to do
    double price = 0;             ///< squared noticeable differences
};

struct Problem {
    Formula formula;
    std::vector<double> start;   ///< grams of each line before any move; less than the formula's where it is not to be had
    std::vector<bool> missing;   ///< lines whose start is below the formula's
    std::vector<bool> excluded;  ///< lines that the maker wants to be without
    Material start_total;
    std::vector<Move> moves;
    std::vector<LinearConstraint> constraints;
    std::vector<std::vector<std::size_t>> exclusive;  ///< of each group a plan uses one move at most (exclusive.hpp)
    std::vector<double> spared;                       ///< share of each line that a want asks to have less of: not missed
    std::vector<ProcessOption> processes;
    double least_meat = 0;         ///< g
    std::vector<double> loss;      ///< squared noticeable differences for losing each line whole (losses.hpp)
    std::vector<double> insisted;  ///< of it, what the maker's own idea for the line adds: it is taken, and nobody tastes that
    std::vector<Goal> hard;        ///< limits no plan may break: conditions, and word wants as far as all of them can be met

    bool all_there() const {
        return std::none_of(missing.begin(), missing.end(), [](bool one) { return one; });
    }
};

/// Share of a line that is not to be had.
double missing_share(const Problem& problem, std::size_t line);

/// Whether the line is a herb or a spice that is not to be had.
bool is_missing_seasoning(const Problem& problem, std::size_t line, const Knowledge& knowledge);

/// The goals as limits: conditions as they are, words at their target less the slack within which they count as met.
std::vector<Goal> hard_goals(const Distance& distance);

/// The same with what is bounded on both sides kept off both bounds; nothing where no property is.
std::optional<std::vector<Goal>> well_within(const std::vector<Goal>& hard);

/// Everything that may be done about `formula`, with every goal as a hard limit. Lines marked keep have no moves.
Problem make_problem(const Formula& formula, const Stock& stock, const SwapGraph& graph, const Distance& distance, const Context& context,
                     Leeway leeway = Leeway::usual);

}  // namespace standin
