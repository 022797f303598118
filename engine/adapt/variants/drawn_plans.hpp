// Plans as they are weighed out, judged on the draws. What is shown and judged are medians over the draws of weights as rounded; the search
// works at the middle of every band, and the two lie a little apart. Here the limits of the search are moved by what lies between.
#pragma once

#include <optional>
#include <vector>

#include "adapt/goals/request.hpp"
#include "adapt/search/rebalance.hpp"
#include "adapt/search/search.hpp"
#include "adapt/variants/variant.hpp"
#include "evaluate/batch.hpp"

namespace standin {

/// A plan as weighed out, and what it is at every draw.
struct WeighedPlan {
    Plan plan;
    BuiltVariant built;
    SampledBatch batch;
    std::vector<State> states;
};

class DrawnPlans {
public:
    /// All of it is lent for as long as this lives; `problem` may change between two calls. `sure`: the share of the draws in which a want
    /// is to be met.
    DrawnPlans(const Formula& base, const std::vector<State>& base_states, const Problem& problem, const Distance& distance,
               const Stock& stock, const Context& context, double sure)
        : base_(base), base_states_(base_states), problem_(problem), distance_(distance), stock_(stock), context_(context), sure_(sure) {}

    WeighedPlan weighed_out(const Plan& plan) const { return weighed_out(plan, problem_); }
    /// A plan of another problem.
    WeighedPlan weighed_out(const Plan& plan, const Problem& problem) const;

    /// What a property comes to at the draw that decides.
    double sure_value(const std::vector<State>& states, const Goal& goal) const;

    /// Goals with the limits moved by what the draws of the plan miss; nothing when they keep all of them.
    std::optional<std::vector<Goal>> tighter(const Plan& plan, const std::vector<Goal>& hard) const;

    /// The same of the best relaxed batch, to be asked of every plan.
    std::vector<Goal> moved_for_all(const std::vector<Goal>& asked) const;

    /// The shift for all may ask more of a plan than its own draws need: balances it once more from the limits as asked.
    void ease(Plan& plan, const std::vector<Goal>& hard) const;

    /// Of plans that are as good as tied the one that touches fewer lines.
    void simplify(Plan& plan, const std::vector<Goal>& asked) const;

    Rebalancer rebalancer() const { return {problem_, distance_, context_.nominal().models()}; }

private:
    bool comes_in_beside(const Move& move, const Plan& plan) const;
    std::optional<std::vector<Choice>> without_remnants(std::vector<Choice> choices, const std::vector<double>& grams) const;
    std::optional<Plan> kept_within(const std::vector<Choice>& choices, const Plan& from, std::vector<Goal> hard) const;
    std::optional<Plan> best_relaxed(const std::vector<Choice>& open) const;

    const Formula& base_;
    const std::vector<State>& base_states_;
    const Problem& problem_;
    const Distance& distance_;
    const Stock& stock_;
    const Context& context_;
    double sure_;
};

}  // namespace standin
