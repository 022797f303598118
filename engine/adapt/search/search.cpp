#include "adapt/search/search.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>
#include <set>
#include <utility>

#include "adapt/goals/moved_further.hpp"
#include "adapt/moves/exclusive.hpp"
#include "adapt/search/other_signatures.hpp"
#include "adapt/search/signature.hpp"
#include "optimize/branch_and_bound.hpp"

namespace standin {
namespace {

constexpr double used_share = 0.01;  // of a move's most; below that and below used_grams it is not worth the weighing
constexpr double used_grams = 1;
constexpr double worth_adding = 0.2;    // squared differences that one more change must gain to be an idea of its own
constexpr double remnant_share = 0.15;  // of a line
constexpr double bound_slack = 1e-3;    // squared differences; solver tolerance

FixedCharge charges(const Problem& problem, std::size_t most_changes) {
    FixedCharge charge;
    for (const auto& move : problem.moves) charge.variables.push_back({move.most, move.price, !move.trim});
    charge.exclusive = problem.exclusive;
    charge.most_chosen = most_changes;
    return charge;
}

BranchLimits branch_limits(const SearchLimits& limits) {
    BranchLimits branch;
    branch.answers = limits.plans;
    branch.nodes = limits.nodes;
    branch.slack = bound_slack;
    branch.worth_adding = worth_adding;
    if (limits.progress)
        branch.progress = [&limits](std::size_t visited, double cost) { return limits.progress(visited, std::sqrt(cost)); };
    return branch;
}

class PlanSearch : public BranchAndBound<Solution, Plan> {
public:
    PlanSearch(const Problem& problem, const Distance& distance, const Models& middle, const SearchLimits& limits)
        : BranchAndBound(charges(problem, limits.changes), branch_limits(limits)),
          problem_(problem),
          rebalancer_(problem, distance, middle),
          limits_(limits) {}

    SearchResult plans() {
        Result found = run();
        SearchResult result;
        result.proved = found.proved;
        const double last = found.answers.empty() ? 0 : found.answers.back().cost;
        if (!found.proved) result.gap = std::max(0.0, std::sqrt(last) - std::sqrt(found.least_left));
        result.plans = std::move(found.answers);
        result.visited = found.visited;
        result.stopped = found.stopped;
        result.least_violation = least_violation_;
        return result;
    }

private:
    // One a way of making the batch.
    std::vector<Node> roots() override {
        std::vector<Node> nodes;
        least_violation_ = std::numeric_limits<double>::infinity();
        for (std::size_t p = 0; p < problem_.processes.size(); ++p) {
            Node root{p, Choices(problem_.moves.size(), Choice::open), {}};
            solve(root, halfway());
            if (!root.relaxed.feasible()) solve(root, {}, nullptr, true);
            least_violation_ = std::min(least_violation_, root.relaxed.violation);
            nodes.push_back(std::move(root));
        }
        if (least_violation_ < 1e-4) least_violation_ = 0;
        return nodes;
    }

    // A start that already replaces what is missing, where a line has stand-ins at all.
    std::vector<double> halfway() const {
        std::vector<double> grams(problem_.moves.size(), 0.0);
        std::vector<std::size_t> count(problem_.formula.lines.size(), 0);
        for (const auto& move : problem_.moves)
            for (const auto& stands : move.stands_for) ++count[stands.line];
        for (std::size_t m = 0; m < grams.size(); ++m)
            for (const auto& stands : problem_.moves[m].stands_for)
                if (problem_.missing[stands.line])
                    grams[m] = std::min(problem_.moves[m].most, grams[m] + stands.equal_grams / static_cast<double>(count[stands.line]));
        return grams;
    }

    void relax(Node& node, const std::vector<double>& from) override { solve(node, from); }

    // Under the problem's own goals, or others that may be tighter.
    void solve(Node& node, const std::vector<double>& from, const std::vector<Goal>* hard = nullptr, bool multistart = false) {
        const ProcessOption& process = problem_.processes[node.root];
        node.relaxed =
            rebalancer_.solve(node.choices, process, from, {worst_kept() - process.price, multistart, hard, node.relaxed.basins});
        node.relaxed.cost += process.price;
        node.relaxed.price += process.price;
        count_relaxation();
    }

    // What will be shown is solved again from other starts.
    void polish(Node& node, const std::vector<Goal>& hard) const {
        const ProcessOption& process = problem_.processes[node.root];
        node.relaxed.cost -= process.price;
        node.relaxed.price -= process.price;
        node.relaxed = rebalancer_.polished(node.choices, process, node.relaxed, {.hard = &hard});
        node.relaxed.cost += process.price;
        node.relaxed.price += process.price;
    }

    // Only the parts that do without one of the plan's foods and all its equivalents are worth looking into. Together they hold every
    // other idea.
    std::optional<std::vector<Choices>> other_parts(const Node& node, double within) const override {
        const Signature mine = signature_of(problem_, used_or_in(node));
        for (const auto& plan : held()) {
            if (plan.cost > node.bound() + within) continue;
            const Signature theirs = signature_of(problem_, used_moves(problem_, plan.grams));
            if (relation(problem_, mine, theirs) != Relation::different) return parts_with_other_signatures(problem_, node.choices, theirs);
        }
        return std::nullopt;
    }

    std::vector<std::size_t> used_or_in(const Node& node) const {
        std::vector<std::size_t> moves = used_moves(problem_, node.relaxed.grams);
        for (std::size_t m = 0; m < node.choices.size(); ++m)
            if (node.choices[m] == Choice::in && std::find(moves.begin(), moves.end(), m) == moves.end()) moves.push_back(m);
        return moves;
    }

    // Whether every plan of the node would only add to one that is held, or do the same with other foods of the kind, without gaining
    // enough to stand beside it.
    bool dominated(const Node& node) const override {
        std::vector<std::size_t> in;
        for (std::size_t m = 0; m < node.choices.size(); ++m)
            if (node.choices[m] == Choice::in) in.push_back(m);
        const Signature chosen = signature_of(problem_, in);
        if (chosen.empty()) return false;  // anything may still come of it
        return std::any_of(held().begin(), held().end(),
                           [&](const Plan& plan) { return says_no_more(chosen, node.bound() + bound_slack, plan); });
    }

    // Whether an idea at this cost (or more) has no place beside a plan that is held.
    bool says_no_more(const Signature& mine, double cost, const Plan& plan) const {
        const Signature theirs = signature_of(problem_, used_moves(problem_, plan.grams));
        const Relation like = relation(problem_, mine, theirs);
        if (like == Relation::different) return false;
        const bool longer = like == Relation::includes && relation(problem_, theirs, mine) == Relation::different;
        return cost > plan.cost - (longer ? worth_adding : 0);
    }

    // What the plan really uses, at the prices of that alone; once.
    std::optional<Plan> answer_of(const Node& node) override {
        const auto used = used_moves(problem_, node.relaxed.grams);
        if (limits_.changes > 0 && edits(used) > limits_.changes) return std::nullopt;
        if (!keeps_exclusions(problem_, used)) return std::nullopt;
        if (!recorded_.insert(std::make_pair(node.root, used)).second) return std::nullopt;
        Node exact = node;
        exact.relaxed.basins = {};  // what is chosen and not used falls away, with its price
        std::fill(exact.choices.begin(), exact.choices.end(), Choice::out);
        for (const auto m : used) exact.choices[m] = Choice::in;
        return balanced(std::move(exact), node.relaxed.grams);
    }

    // Under goals so tight that it keeps them once it is weighed out.
    std::optional<Plan> balanced(Node exact, const std::vector<double>& from) {
        std::vector<Goal> hard = problem_.hard;
        constexpr int most_rounds = 4;
        for (int round = 0; round < most_rounds; ++round) {
            solve(exact, from, &hard);
            if (!exact.relaxed.feasible()) solve(exact, from, &hard, true);  // from one start it may end where no way leads on
            if (!exact.relaxed.feasible() || exact.relaxed.cost > worst_kept() || has_no_place(plan_of(exact))) return std::nullopt;
            leave_no_remnants(exact, hard);
            Plan plan = plan_of(exact);
            if (has_no_place(plan)) return std::nullopt;
            auto tighter = limits_.tighter ? limits_.tighter(plan, hard) : std::nullopt;
            if (!tighter) {
                polish(exact, hard);
                plan = plan_of(exact);
                tighter = limits_.tighter ? limits_.tighter(plan, hard) : std::nullopt;
            }
            if (!tighter) return plan;
            hard = moved_further(hard, std::move(*tighter), round);
        }
        return std::nullopt;
    }

    static Plan plan_of(const Node& node) { return {node.root, node.relaxed.grams, node.relaxed.cost, node.relaxed.price}; }

    // A few grams left of a line are no kindness to the maker: leave the line out where that costs next to nothing. A remnant that is no
    // weight at all goes whatever it costs.
    void leave_no_remnants(Node& exact, const std::vector<Goal>& hard) {
        Node clean = exact;
        bool left_over = false, remnants = false;
        for (std::size_t m = 0; m < clean.choices.size(); ++m) {
            const Move& move = problem_.moves[m];
            if (move.kind != MoveKind::reduce || move.trim || clean.choices[m] == Choice::out) continue;
            const double left = move.most - exact.relaxed.grams[m];
            if (left <= 0 || left > std::max(remnant_share * move.most, move.remnant)) continue;
            clean.choices[m] = Choice::full;
            left_over = true;
            remnants = remnants || left < move.remnant;
        }
        if (!left_over) return;
        solve(clean, exact.relaxed.grams, &hard);
        if (clean.relaxed.feasible() && (remnants || clean.relaxed.cost < exact.relaxed.cost + worth_adding)) exact = std::move(clean);
    }

    std::size_t edits(const std::vector<std::size_t>& used) const {
        return static_cast<std::size_t>(std::count_if(used.begin(), used.end(), [&](std::size_t m) { return !problem_.moves[m].trim; }));
    }

    bool has_no_place(const Plan& fresh) const {
        const Signature mine = signature_of(problem_, used_moves(problem_, fresh.grams));
        return std::any_of(held().begin(), held().end(), [&](const Plan& old) {
            return says_no_more(mine, fresh.cost, old) || (fresh.cost > old.cost && drops_a_stand_in_of(fresh, old));
        });
    }

    // Whether a plan is one that is held with a stand-in thrown out and nothing in its place.
    bool drops_a_stand_in_of(const Plan& plan, const Plan& whole) const {
        const auto stands_in = [&](const Plan& p) {
            std::set<std::size_t> moves;
            for (const auto m : used_moves(problem_, p.grams))
                if (problem_.moves[m].kind == MoveKind::stand_in) moves.insert(m);
            return moves;
        };
        const auto mine = stands_in(plan), theirs = stands_in(whole);
        return mine.size() < theirs.size() && std::includes(theirs.begin(), theirs.end(), mine.begin(), mine.end());
    }

    // Of two plans where one says no more than the other, the longer stands only if it gains; of equal ideas the better stays.
    bool displaces(const Plan& fresh, const Plan& old) const override {
        const bool no_more = says_no_more(signature_of(problem_, used_moves(problem_, old.grams)), old.cost, fresh);
        return no_more || (old.cost > fresh.cost && drops_a_stand_in_of(old, fresh));
    }

    const Problem& problem_;
    Rebalancer rebalancer_;
    const SearchLimits& limits_;
    std::set<std::pair<std::size_t, std::vector<std::size_t>>> recorded_;
    double least_violation_ = 0;
};

}  // namespace

std::vector<std::size_t> used_moves(const Problem& problem, const std::vector<double>& grams) {
    std::vector<std::size_t> used;
    for (std::size_t m = 0; m < grams.size(); ++m)
        if (grams[m] > std::min(used_share * problem.moves[m].most, used_grams)) used.push_back(m);
    return used;
}

SearchResult search_plans(const Problem& problem, const Distance& distance, const Models& middle, const SearchLimits& limits) {
    return PlanSearch(problem, distance, middle, limits).plans();
}

}  // namespace standin
