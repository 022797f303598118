#include "adapt/variants/drawn_plans.hpp"

#include <algorithm>
#include <cmath>

#include "adapt/distance/met.hpp"
#include "adapt/goals/moved_further.hpp"
#include "adapt/search/closed_salt.hpp"
#include "adapt/variants/idle_steps.hpp"
#include "evaluate/predict.hpp"

namespace standin {

WeighedPlan DrawnPlans::weighed_out(const Plan& found, const Problem& problem) const {
    Plan plan = with_salt_closed(found, problem, distance_, context_);
    BuiltVariant built = build_variant(problem, plan, stock_, context_.knowledge());
    drop_idle_steps(built, base_.process, distance_, context_.nominal());
    SampledBatch batch(built.formula, context_.sampled());
    auto states = batch.states();
    return {std::move(plan), std::move(built), std::move(batch), std::move(states)};
}

// What the best relaxed batch misses is asked of every plan. It comes from the models, and is much the same whatever the food; but each
// chile has a wide band of its own: heat is asked for only as far as the best batch without that one's new foods misses it too. Else
// the bound lies, and a better plan with another chile is passed over.
std::vector<Goal> DrawnPlans::moved_for_all(const std::vector<Goal>& asked) const {
    std::vector<Choice> open(problem_.moves.size(), Choice::open);
    const auto relaxed = best_relaxed(open);
    auto moved = relaxed ? tighter(*relaxed, asked) : std::nullopt;
    if (!moved) return asked;
    const auto of_heat = [](const Goal& goal) { return goal.property == Property::heat_mg_kg; };
    if (std::none_of(asked.begin(), asked.end(), of_heat)) return std::move(*moved);
    for (const auto m : used_moves(problem_, relaxed->grams))
        if (problem_.moves[m].brings_food()) open[m] = Choice::out;
    const auto others = best_relaxed(open);
    if (!others) return std::move(*moved);
    const std::vector<Goal> less = tighter(*others, asked).value_or(asked);
    for (std::size_t g = 0; g < asked.size(); ++g) {
        if (!of_heat(asked[g])) continue;
        double& limit = (*moved)[g].limit;
        limit = asked[g].kind == Goal::Kind::at_most ? std::max(limit, less[g].limit) : std::min(limit, less[g].limit);
    }
    return std::move(*moved);
}

// The best batch of what is open, as if it were a plan.
std::optional<Plan> DrawnPlans::best_relaxed(const std::vector<Choice>& open) const {
    std::optional<Plan> best;
    if (problem_.hard.empty()) return best;
    for (std::size_t p = 0; p < problem_.processes.size(); ++p) {
        const Solution s = rebalancer().solve(open, problem_.processes[p], {}, {.multistart = true});
        if (s.feasible() && (!best || s.cost < best->cost)) best = Plan{p, s.grams, s.cost, s.price};
    }
    return best;
}

// Goals with the limits moved by what the medians of the plan miss; nothing when they keep all of them.
std::optional<std::vector<Goal>> DrawnPlans::tighter(const Plan& plan, const std::vector<Goal>& hard) const {
    constexpr double margin = 1.2;        // the median moves a little less than the limit
    constexpr double least_shift = 0.02;  // of a noticeable difference: less is lost in the rounding of the weights
    const WeighedPlan tried = weighed_out(plan);
    std::vector<Goal> moved = hard;
    bool any = false;
    for (std::size_t g = 0; g < hard.size(); ++g) {
        const Goal& asked = distance_.goals()[g];
        const double short_by = missed_by(asked, distance_, base_states_, tried.states, sure_);
        if (short_by <= 0 || asked.kind == Goal::Kind::equal) continue;
        const double shift = std::max(margin * short_by, least_shift * distance_.unit(asked.property));
        moved[g].limit += asked.kind == Goal::Kind::at_most ? -shift : shift;
        any = true;
    }
    return any ? std::optional(std::move(moved)) : std::nullopt;
}

// What a property comes to at the draw that decides.
double DrawnPlans::sure_value(const std::vector<State>& states, const Goal& goal) const {
    std::vector<double> values = values_of(states, goal.property);
    std::sort(values.begin(), values.end());
    const double share = goal.kind == Goal::Kind::at_least ? 1 - sure_ : sure_;
    return values[std::min(values.size() - 1, static_cast<std::size_t>(share * static_cast<double>(values.size())))];
}

// The shift of the relaxed batch may ask more of a plan than its own medians need: balance it once more from the limits as asked.
void DrawnPlans::ease(Plan& plan, const std::vector<Goal>& hard) const {
    std::vector<Choice> choices(problem_.moves.size(), Choice::out);
    for (const auto m : used_moves(problem_, plan.grams)) choices[m] = plan.grams[m] >= problem_.moves[m].most ? Choice::full : Choice::in;
    if (const auto nearer = kept_within(choices, plan, hard); nearer && nearer->cost < plan.cost) plan = *nearer;
}

// Of plans that are as good as tied the one that touches fewer lines: a line that moves and gains next to nothing stays as it is, and
// another food is not brought in for less than anybody notices.
void DrawnPlans::simplify(Plan& plan, const std::vector<Goal>& asked) const {
    constexpr double tie = 0.1;           // squared noticeable differences
    constexpr double worth_a_food = 0.3;  // noticeable differences; judgement
    const double tied = plan.cost + tie;  // of all that is left out together
    const double without_food = std::pow(std::sqrt(plan.cost) + worth_a_food, 2);
    for (const auto m : used_moves(problem_, plan.grams)) {
        const Move& move = problem_.moves[m];
        const bool added = comes_in_beside(move, plan);
        if (move.trim || (move.brings_food() && !added)) continue;
        const double enough = added ? without_food : tied;
        std::vector<Choice> choices(problem_.moves.size(), Choice::out);
        for (const auto other : used_moves(problem_, plan.grams))
            choices[other] = plan.grams[other] >= problem_.moves[other].most ? Choice::full : Choice::in;
        choices[m] = Choice::out;
        if (const auto shorter = kept_within(choices, plan, asked); shorter && shorter->cost <= enough) plan = *shorter;
    }
}

// What comes in for nothing that goes: no stand-in, or one beside a line that stays whole, or the partner of one that is not used.
bool DrawnPlans::comes_in_beside(const Move& move, const Plan& plan) const {
    const auto used = used_moves(problem_, plan.grams);
    const auto any = [&](MoveKind kind, std::size_t line) {
        return std::any_of(used.begin(), used.end(),
                           [&](std::size_t m) { return problem_.moves[m].kind == kind && problem_.moves[m].line == line; });
    };
    if (move.kind == MoveKind::stand_in) return !move.into && !problem_.missing[move.line] && !any(MoveKind::reduce, move.line);
    return move.kind == MoveKind::add && !(move.partner_of && any(MoveKind::stand_in, *move.partner_of));
}

// What leaves of a line so little that nobody keeps it takes all of it; nothing where no line is left so.
std::optional<std::vector<Choice>> DrawnPlans::without_remnants(std::vector<Choice> choices, const std::vector<double>& grams) const {
    bool any = false;
    for (std::size_t m = 0; m < choices.size(); ++m) {
        const Move& move = problem_.moves[m];
        const double left = move.most - grams[m];
        if (move.kind != MoveKind::reduce || move.trim || choices[m] == Choice::out || !(left > 0) || left >= move.remnant) continue;
        choices[m] = Choice::full;
        any = true;
    }
    return any ? std::optional(std::move(choices)) : std::nullopt;
}

// The best grams of these moves whose medians keep what was asked.
std::optional<Plan> DrawnPlans::kept_within(const std::vector<Choice>& choices, const Plan& from, std::vector<Goal> hard) const {
    constexpr int rounds = 4;
    const auto& process = problem_.processes[from.process];
    for (int round = 0; round < rounds; ++round) {
        Solution s = rebalancer().solve(choices, process, from.grams, {.hard = &hard});
        if (!s.feasible()) break;
        if (const auto clean = without_remnants(choices, s.grams)) {
            s = rebalancer().solve(*clean, process, s.grams, {.hard = &hard});
            if (!s.feasible() || without_remnants(*clean, s.grams)) break;
        }
        Plan plan{from.process, s.grams, s.cost + process.price, s.price + process.price};
        auto moved = tighter(plan, hard);
        if (!moved) return plan;
        hard = moved_further(hard, std::move(*moved), round);
    }
    return std::nullopt;
}

}  // namespace standin
