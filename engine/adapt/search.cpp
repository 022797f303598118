#include "adapt/search.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <queue>
#include <set>

#include "adapt/exclusive.hpp"
#include "adapt/other_signatures.hpp"
#include "adapt/signature.hpp"

namespace standin {
namespace {

constexpr double used_share = 0.01;  // of a move's most; below that and below used_grams it is not worth the weighing
constexpr double used_grams = 1;
constexpr double rounded_up = 0.05;      // of a move's most; what the relaxed batch uses more of is used in the plan made of it
constexpr double worth_adding = 0.2;     // squared differences that one more change must gain to be an idea of its own
constexpr double remnant_share = 0.15;   // of a line
constexpr std::size_t long_while = 300;  // nodes
constexpr double bound_slack = 1e-3;     // squared differences; solver tolerance

struct Node {
    std::size_t process = 0;
    std::vector<Choice> choices;
    Solution relaxed;

    double bound() const { return relaxed.cost; }
};

struct Later {
    bool operator()(const Node& a, const Node& b) const { return a.bound() > b.bound(); }
};

class Search {
public:
    Search(const Problem& problem, const Distance& distance, const Models& middle, const SearchLimits& limits)
        : problem_(problem), rebalancer_(problem, distance, middle), limits_(limits), excluded_by_(problem.moves.size()) {
        for (const auto& group : problem.exclusive)
            for (const auto a : group)
                for (const auto b : group)
                    if (a != b) excluded_by_[a].push_back(b);
    }

    SearchResult run() && {
        roots();
        while (!open_.empty()) {
            if (open_.top().bound() >= worst_kept() - bound_slack || nothing_new()) break;
            if (result_.visited >= limits_.nodes || stopped()) break;
            Node node = open_.top();
            open_.pop();
            if (!dominated(node)) expand(std::move(node));
        }
        result_.proved = open_.empty() || (!result_.plans.empty() && open_.top().bound() >= worst_finite() - bound_slack);
        if (!result_.proved) result_.gap = std::max(0.0, std::sqrt(worst_finite()) - std::sqrt(open_.top().bound()));
        return std::move(result_);
    }

private:
    // Nothing better found in a long while: as many ideas as asked for, and what is left open is the proof; or fewer, those proved, and
    // others may be, but further off.
    bool nothing_new() const {
        if (result_.plans.empty() || result_.visited <= found_at_ + long_while) return false;
        return result_.plans.size() >= limits_.plans || open_.top().bound() >= worst_finite() - bound_slack;
    }

    void roots() {
        result_.least_violation = std::numeric_limits<double>::infinity();
        for (std::size_t p = 0; p < problem_.processes.size(); ++p) {
            Node root{p, std::vector<Choice>(problem_.moves.size(), Choice::open), {}};
            solve(root, halfway());
            if (!root.relaxed.feasible()) solve(root, {}, nullptr, true);
            result_.least_violation = std::min(result_.least_violation, root.relaxed.violation);
            if (root.relaxed.feasible()) open_.push(std::move(root));
        }
        if (result_.least_violation < 1e-4) result_.least_violation = 0;
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

    // Under the problem's own goals, or others that may be tighter.
    void solve(Node& node, const std::vector<double>& from, const std::vector<Goal>* hard = nullptr, bool multistart = false) {
        const ProcessOption& process = problem_.processes[node.process];
        node.relaxed =
            rebalancer_.solve(node.choices, process, from, {worst_kept() - process.price, multistart, hard, node.relaxed.basins});
        node.relaxed.cost += process.price;
        node.relaxed.price += process.price;
        ++result_.visited;
    }

    // What will be shown is solved again from other starts.
    void polish(Node& node, const std::vector<Goal>& hard) const {
        const ProcessOption& process = problem_.processes[node.process];
        node.relaxed.cost -= process.price;
        node.relaxed.price -= process.price;
        node.relaxed = rebalancer_.polished(node.choices, process, node.relaxed, {.hard = &hard});
        node.relaxed.cost += process.price;
        node.relaxed.price += process.price;
    }

    void expand(Node node) {
        if (leave_to_others(node, bound_slack)) return;
        const std::size_t branch = most_fractional(node);
        if (branch == none) {
            record(node);
            if (dominated(node) || leave_to_others(node, worth_adding)) return;
            const std::size_t next = cheapest_open(node);
            if (next != none) split(std::move(node), next);
            return;
        }
        try_rounding(node);
        split(std::move(node), branch);
    }

    // An open move that the relaxed batch uses: the one whose price is furthest from paid.
    std::size_t most_fractional(const Node& node) const {
        std::size_t best = none;
        double most = 0;
        for (std::size_t m = 0; m < node.choices.size(); ++m) {
            if (node.choices[m] != Choice::open) continue;
            const double share = node.relaxed.grams[m] / std::max(problem_.moves[m].most, 1e-12);
            if (share < 1e-3) continue;
            const double unpaid = problem_.moves[m].price * (1 - share) + 1e-9;
            if (unpaid > most) {
                most = unpaid;
                best = m;
            }
        }
        return best;
    }

    std::size_t cheapest_open(const Node& node) const {
        std::size_t best = none;
        for (std::size_t m = 0; m < node.choices.size(); ++m)
            if (node.choices[m] == Choice::open && problem_.moves[m].most > 0 &&
                (best == none || problem_.moves[m].price < problem_.moves[best].price))
                best = m;
        return best;
    }

    // Where the relaxed batch says no more than a plan that is held and is no nearer than `within`, only the parts of the node that cannot
    // say the same are worth looking into: those that do without one of the plan's foods and all its equivalents. Together they hold every
    // other idea.
    bool leave_to_others(const Node& node, double within) {
        const Signature mine = signature_of(problem_, used_or_in(node));
        for (const auto& held : result_.plans) {
            if (held.cost > node.bound() + within) continue;
            const Signature theirs = signature_of(problem_, used_moves(problem_, held.grams));
            if (relation(problem_, mine, theirs) == Relation::different) continue;
            for (auto& part : parts_with_other_signatures(problem_, node.choices, theirs)) push_part(std::move(part), node);
            return true;
        }
        return false;
    }

    std::vector<std::size_t> used_or_in(const Node& node) const {
        std::vector<std::size_t> moves = used_moves(problem_, node.relaxed.grams);
        for (std::size_t m = 0; m < node.choices.size(); ++m)
            if (node.choices[m] == Choice::in && std::find(moves.begin(), moves.end(), m) == moves.end()) moves.push_back(m);
        return moves;
    }

    void push_part(std::vector<Choice> choices, const Node& whole) {
        if (!parts_.insert(std::make_pair(whole.process, choices)).second) return;
        Node part{whole.process, std::move(choices), whole.relaxed};
        if (too_many(part)) return;
        solve(part, whole.relaxed.grams);
        keep_open(std::move(part), whole.bound());
    }

    void split(Node node, std::size_t move) {
        Node with = node;
        with.choices[move] = Choice::in;
        shut_excluded(with.choices, move);
        if (!too_many(with)) {
            solve(with, node.relaxed.grams);
            keep_open(std::move(with), node.bound());
        }
        Node without = std::move(node);
        const double parent = without.bound();
        const bool unused = without.relaxed.grams[move] < 1e-3 * problem_.moves[move].most;
        without.choices[move] = Choice::out;
        if (!unused) {
            const std::vector<double> from = without.relaxed.grams;
            solve(without, from);
        }
        keep_open(std::move(without), parent);
    }

    // A chosen move leaves no room for those that it excludes.
    void shut_excluded(std::vector<Choice>& choices, std::size_t move) const {
        for (const auto other : excluded_by_[move])
            if (choices[other] == Choice::open) choices[other] = Choice::out;
    }

    // Whether every plan of the node would only add to one that is held, or do the same with other foods of the kind, without gaining
    // enough to stand beside it.
    bool dominated(const Node& node) const {
        std::vector<std::size_t> in;
        for (std::size_t m = 0; m < node.choices.size(); ++m)
            if (node.choices[m] == Choice::in) in.push_back(m);
        const Signature chosen = signature_of(problem_, in);
        if (chosen.empty()) return false;  // anything may still come of it
        return std::any_of(result_.plans.begin(), result_.plans.end(),
                           [&](const Plan& held) { return says_no_more(chosen, node.bound() + bound_slack, held); });
    }

    // Whether an idea at this cost (or more) has no place beside a plan that is held.
    bool says_no_more(const Signature& mine, double cost, const Plan& held) const {
        const Signature theirs = signature_of(problem_, used_moves(problem_, held.grams));
        const Relation like = relation(problem_, mine, theirs);
        if (like == Relation::different) return false;
        const bool longer = like == Relation::includes && relation(problem_, theirs, mine) == Relation::different;
        return cost > held.cost - (longer ? worth_adding : 0);
    }

    // A child is part of its parent, so it inherits the better bound where the solver stopped a little short.
    void keep_open(Node node, double parent_bound) {
        if (!node.relaxed.feasible()) return;
        node.relaxed.cost = std::max(node.relaxed.cost, parent_bound - bound_slack);
        if (node.bound() < worst_kept() - bound_slack) open_.push(std::move(node));
    }

    bool too_many(const Node& node) const {
        if (limits_.changes == 0) return false;
        std::size_t count = 0;
        for (std::size_t m = 0; m < node.choices.size(); ++m) count += node.choices[m] == Choice::in && !problem_.moves[m].trim;
        return count > limits_.changes;
    }

    // The relaxed batch's own moves, at full price: a real plan early, so that more can be cut off.
    void try_rounding(const Node& node) {
        Node rounded = node;
        keep_one_of_exclusive(rounded);
        for (std::size_t m = 0; m < rounded.choices.size(); ++m) {
            if (rounded.choices[m] != Choice::open) continue;
            const bool used = node.relaxed.grams[m] > rounded_up * problem_.moves[m].most;
            rounded.choices[m] = used ? Choice::in : Choice::out;
        }
        if (too_many(rounded) || !tried_.insert(std::make_pair(rounded.process, rounded.choices)).second) return;
        solve(rounded, node.relaxed.grams);
        if (rounded.relaxed.feasible()) record(rounded);
    }

    // Of moves that exclude each other the most used.
    void keep_one_of_exclusive(Node& node) const {
        const auto share = [&](std::size_t m) { return node.relaxed.grams[m] / std::max(problem_.moves[m].most, 1e-12); };
        for (std::size_t m = 0; m < node.choices.size(); ++m) {
            if (node.choices[m] != Choice::open) continue;
            for (const auto other : excluded_by_[m])
                if (node.choices[other] == Choice::in || (node.choices[other] == Choice::open && share(other) > share(m)))
                    node.choices[m] = Choice::out;
            if (node.choices[m] == Choice::open && share(m) > rounded_up) shut_excluded(node.choices, m);
        }
    }

    // What the plan really uses, at the prices of that alone; once.
    void record(const Node& node) {
        const auto used = used_moves(problem_, node.relaxed.grams);
        if (limits_.changes > 0 && edits(used) > limits_.changes) return;
        if (!keeps_exclusions(problem_, used)) return;
        if (!recorded_.insert(std::make_pair(node.process, used)).second) return;
        Node exact = node;
        exact.relaxed.basins = {};  // what is chosen and not used falls away, with its price
        std::fill(exact.choices.begin(), exact.choices.end(), Choice::out);
        for (const auto m : used) exact.choices[m] = Choice::in;
        std::vector<Goal> hard = problem_.hard;
        constexpr int most_rounds = 4;
        for (int round = 0; round < most_rounds; ++round) {
            solve(exact, node.relaxed.grams, &hard);
            if (!exact.relaxed.feasible() || exact.relaxed.cost > worst_kept() || has_no_place(plan_of(exact))) return;
            leave_no_remnants(exact, hard);
            Plan plan = plan_of(exact);
            if (has_no_place(plan)) return;
            auto tighter = limits_.tighter ? limits_.tighter(plan, hard) : std::nullopt;
            if (!tighter) {
                polish(exact, hard);
                plan = plan_of(exact);
                tighter = limits_.tighter ? limits_.tighter(plan, hard) : std::nullopt;
            }
            if (!tighter) return keep(std::move(plan));
            hard = std::move(*tighter);
        }
    }

    static Plan plan_of(const Node& node) { return {node.process, node.relaxed.grams, node.relaxed.cost, node.relaxed.price}; }

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

    bool has_no_place(const Plan& plan) const {
        const Signature mine = signature_of(problem_, used_moves(problem_, plan.grams));
        return std::any_of(result_.plans.begin(), result_.plans.end(), [&](const Plan& held) {
            return says_no_more(mine, plan.cost, held) || (plan.cost > held.cost && drops_a_stand_in_of(plan, held));
        });
    }

    // Whether a plan is one that is held with a stand-in thrown out and nothing in its place.
    bool drops_a_stand_in_of(const Plan& plan, const Plan& held) const {
        const auto stands_in = [&](const Plan& p) {
            std::set<std::size_t> moves;
            for (const auto m : used_moves(problem_, p.grams))
                if (problem_.moves[m].kind == MoveKind::stand_in) moves.insert(m);
            return moves;
        };
        const auto mine = stands_in(plan), theirs = stands_in(held);
        return mine.size() < theirs.size() && std::includes(theirs.begin(), theirs.end(), mine.begin(), mine.end());
    }

    // Of two plans where one says no more than the other, the longer stands only if it gains; of equal ideas the better stays.
    void keep(Plan plan) {
        std::erase_if(result_.plans, [&](const Plan& held) {
            const bool no_more = says_no_more(signature_of(problem_, used_moves(problem_, held.grams)), held.cost, plan);
            return no_more || (held.cost > plan.cost && drops_a_stand_in_of(held, plan));
        });
        found_at_ = result_.visited;
        result_.plans.push_back(std::move(plan));
        order();
        if (result_.plans.size() > limits_.plans) result_.plans.resize(limits_.plans);
    }

    void order() {
        std::stable_sort(result_.plans.begin(), result_.plans.end(), [](const Plan& a, const Plan& b) { return a.cost < b.cost; });
    }

    double worst_kept() const {
        return result_.plans.size() < limits_.plans ? std::numeric_limits<double>::infinity() : result_.plans.back().cost;
    }
    double worst_finite() const { return result_.plans.empty() ? 0 : result_.plans.back().cost; }

    bool stopped() {
        if (!limits_.progress) return false;
        const double best = result_.plans.empty() ? std::numeric_limits<double>::infinity() : result_.plans.front().distance();
        result_.stopped = !limits_.progress(result_.visited, best);
        return result_.stopped;
    }

    static constexpr std::size_t none = std::numeric_limits<std::size_t>::max();

    const Problem& problem_;
    Rebalancer rebalancer_;
    const SearchLimits& limits_;
    std::priority_queue<Node, std::vector<Node>, Later> open_;
    std::set<std::pair<std::size_t, std::vector<Choice>>> tried_, parts_;
    std::set<std::pair<std::size_t, std::vector<std::size_t>>> recorded_;
    std::vector<std::vector<std::size_t>> excluded_by_;  // one a move
    std::size_t found_at_ = 0;                           // nodes solved when the last plan was kept
    SearchResult result_;
};

}  // namespace

std::vector<std::size_t> used_moves(const Problem& problem, const std::vector<double>& grams) {
    std::vector<std::size_t> used;
    for (std::size_t m = 0; m < grams.size(); ++m)
        if (grams[m] > std::min(used_share * problem.moves[m].most, used_grams)) used.push_back(m);
    return used;
}

SearchResult search_plans(const Problem& problem, const Distance& distance, const Models& middle, const SearchLimits& limits) {
    return Search(problem, distance, middle, limits).run();
}

}  // namespace standin
