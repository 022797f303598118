// One set of moves as numbers for a solver: what its grams cost, how far that breaks the limits, and how both change.
//
// The variables are the grams of each move over its most. What is minimised is a plain sum: the squares of the rows (what is felt, wants
// missed, lines lost) plus the prices of the moves. The rows that the models make depend on the grams through the sums of the batch only,
// and those are linear: the slopes are taken by differences in the sums and multiplied out, which costs a model run a sum that can move
// at all, however many moves there are.
#pragma once

#include <optional>
#include <vector>

#include "adapt/moves/problem.hpp"
#include "optimize/branching.hpp"
#include "optimize/quadratic.hpp"

namespace standin {

/// What the models say at one set of grams.
struct Iterate {
    std::vector<double> y;           ///< scaled, one a variable
    std::vector<double> rows;        ///< as Distance::rows, then one a line that may be lost
    std::vector<double> violations;  ///< one a limit, kept when not positive; noticeable differences or shares
    double square = 0;               ///< sum of the squared rows
    double price = 0;
    bool empty = false;  ///< nothing is left to weigh: no batch, whatever the limits say

    double cost() const { return square + price; }
    double violation() const;  ///< largest violation, 0 when none
};

class Subproblem {
public:
    /// `hard` are the goals to be kept, the problem's own or tighter ones; it must outlive the subproblem, as everything given here.
    Subproblem(const Problem& problem, const std::vector<Goal>& hard, const Distance& distance, const Models& middle,
               const ProcessOption& process, const std::vector<Choice>& choices);

    std::size_t size() const { return active_.size(); }
    std::size_t constraints() const { return constraint_count_; }
    /// Lower bounds of the variables; the upper bounds are 1.
    const std::vector<double>& least() const { return least_; }
    /// Price of a whole move while it is open; 0 once it is chosen.
    const std::vector<double>& prices() const { return open_price_; }

    std::vector<double> grams(const std::vector<double>& y) const;
    /// Variables for `grams` of every move (empty: nothing moved), brought within the bounds.
    std::vector<double> scaled(const std::vector<double>& grams) const;

    /// Whether a binder is used at all. A little of it does nothing, enough of it sets: a batch without binder is a basin of its own,
    /// and slopes do not lead from one into the other. Nothing where there is but one basin: no binder is open to choice, or one is
    /// chosen and used.
    std::optional<bool> binder_used(const std::vector<double>& y) const;
    /// A start in the basin without binder.
    std::vector<double> without_binder(std::vector<double> y) const;
    /// Starts in the other: with plenty of one binder and nothing of the others, each in turn.
    std::vector<std::vector<double>> with_each_binder(const std::vector<double>& y) const;

    Iterate at(std::vector<double> y) const;
    /// Derivatives of rows and violations by each variable: a row each, a column a variable.
    void slopes(const Iterate& point, Matrix& rows, Matrix& violations) const;

    /// The same a move at a time: on an edge where two sums meet, differences of the sums one by one point over it.
    void slopes_by_move(const Iterate& point, Matrix& rows, Matrix& violations) const;

private:
    bool brings_binder(std::size_t variable) const;
    Material total(const std::vector<double>& y) const;
    void judge(const State& state, std::vector<double>& violations) const;
    void add_constraints(const std::vector<double>& y, std::vector<double>& violations) const;
    void add_losses(const std::vector<double>& y, std::vector<double>& rows) const;
    void linear_slopes(const Iterate& point, Matrix& rows, Matrix& violations) const;
    double lost(std::size_t row, const std::vector<double>& y) const;
    void list_constraints();
    void list_losses();

    const Problem& problem_;
    const std::vector<Goal>& hard_;
    const Distance& distance_;
    const Models& models_;
    const ProcessOption& process_;
    std::vector<std::size_t> active_;
    std::vector<double> open_price_, least_;
    std::vector<std::size_t> moving_;       // sums that some move changes
    std::vector<double> reach_;             // by how much at most
    Matrix by_move_;                        // what a whole move adds to each of them
    Matrix by_constraint_;                  // slopes of the limits on the variables
    std::vector<double> constraint_start_;  // their violation where nothing moves
    Matrix by_loss_;                        // slopes of the rows of lost lines
    std::vector<double> lost_start_;        // those rows where nothing moves
    double fixed_price_ = 0;
    std::size_t constraint_count_ = 0;
};

}  // namespace standin
