// The best few answers of a fixed-charge problem by branch and bound (Land and Doig 1960), the best bound first.
//
// A node fixes some variables as in or out and leaves the rest open. Its relaxation prices every open variable in proportion to its value:
// price * value / most. An answer of the node pays the whole price of each variable it uses, and as values never exceed their most that is
// no less than the relaxed prices of its own values; so its cost is no less than the least relaxed cost, which bounds the node, as far as
// `relax` finds the least. When the least bound left is no better than the last answer that is kept, nothing unvisited can be.
//
// Of variables that exclude each other an answer uses one: where one is chosen the others are out, so every node keeps the rule by itself
// or is split on one of them.
//
// Answers are to be different. What that means is for the problem to say: which nodes hold nothing new (`dominated`), which parts of a node
// do (`other_parts`), and which answers a better one displaces.
//
// A problem derives from this. Its `Relaxed` has a cost, says whether it is feasible() and its values(), one a variable; its `Answer` has a
// cost.
#pragma once

#include <algorithm>
#include <functional>
#include <limits>
#include <queue>
#include <set>
#include <utility>

#include "optimize/branching.hpp"

namespace standin {

struct BranchLimits {
    std::size_t answers = 1;     ///< how many to find
    std::size_t nodes = 1500;    ///< give up proving beyond
    std::size_t patience = 300;  ///< nodes without a better answer, once there are enough of them
    double slack = 1e-3;         ///< of a cost: what the solver of the relaxation may be off by
    double used_share = 0.05;    ///< of its most; what a relaxed solution uses more of is used in the answer that is made of it
    double worth_adding = 0.2;   ///< of a cost; what a part of a node may be behind an answer that says the same
    std::function<bool(std::size_t visited, double best)> progress;  ///< false stops the search; the best cost so far
};

template <class Relaxed, class Answer>
class BranchAndBound {
public:
    struct Node {
        std::size_t root = 0;
        Choices choices;
        Relaxed relaxed;

        double bound() const { return relaxed.cost; }
    };

    struct Result {
        std::vector<Answer> answers;  ///< best first
        bool proved = false;          ///< nothing unvisited is better than the last of them
        double least_left = 0;        ///< where it is not proved: the bound of what was left unvisited
        std::size_t visited = 0;      ///< relaxations solved
        bool stopped = false;         ///< by `progress`
    };

    BranchAndBound(FixedCharge problem, BranchLimits limits) : branching_(std::move(problem)), limits_(std::move(limits)) {}
    BranchAndBound(const BranchAndBound&) = delete;
    BranchAndBound& operator=(const BranchAndBound&) = delete;
    virtual ~BranchAndBound() = default;

    Result run() {
        for (auto& root : roots())
            if (root.relaxed.feasible()) open_.push(std::move(root));
        while (!open_.empty()) {
            if (open_.top().bound() >= worst_kept() - limits_.slack || nothing_new()) break;
            if (result_.visited >= limits_.nodes || stopped()) break;
            Node node = open_.top();
            open_.pop();
            if (!dominated(node)) expand(std::move(node));
        }
        result_.proved = open_.empty() || (!result_.answers.empty() && open_.top().bound() >= last_cost() - limits_.slack);
        if (!result_.proved) result_.least_left = open_.top().bound();
        return std::move(result_);
    }

protected:
    /// Nodes that hold every answer together, relaxed.
    virtual std::vector<Node> roots() = 0;
    /// Solves the relaxation of a node anew, from these values. `node.relaxed` is at first that of a node with fewer choices made.
    virtual void relax(Node& node, const std::vector<double>& from) = 0;
    /// What the relaxed solution of a node really uses, as an answer; nothing where that is none, was told before or has no place.
    virtual std::optional<Answer> answer_of(const Node& node) = 0;
    /// Whether no answer of the node has a place beside those that are held.
    virtual bool dominated(const Node&) const { return false; }
    /// Where the relaxed solution says the same as an answer that is held, no further than `within` behind it: the parts of the node that
    /// can say something else. Nothing: the node is looked into whole.
    virtual std::optional<std::vector<Choices>> other_parts(const Node&, double) const { return std::nullopt; }
    /// Whether an answer that is held gives way to a new one.
    virtual bool displaces(const Answer&, const Answer&) const { return false; }

    void count_relaxation() { ++result_.visited; }
    const std::vector<Answer>& held() const { return result_.answers; }
    const Branching& branching() const { return branching_; }
    /// What a new answer must cost less than.
    double worst_kept() const {
        return result_.answers.size() < limits_.answers ? std::numeric_limits<double>::infinity() : result_.answers.back().cost;
    }

private:
    struct Later {
        bool operator()(const Node& a, const Node& b) const { return a.bound() > b.bound(); }
    };

    // Nothing better found in a long while: as many answers as asked for, and what is left open is the proof; or fewer, those proved, and
    // others may be, but further off.
    bool nothing_new() const {
        if (result_.answers.empty() || result_.visited <= found_at_ + limits_.patience) return false;
        return result_.answers.size() >= limits_.answers || open_.top().bound() >= last_cost() - limits_.slack;
    }

    void expand(Node node) {
        if (leave_to_parts(node, limits_.slack)) return;
        if (const auto branch = branching_.most_fractional(node.choices, node.relaxed.values())) {
            try_rounding(node);
            return split(std::move(node), *branch);
        }
        record(node);
        if (dominated(node) || leave_to_parts(node, limits_.worth_adding)) return;
        if (const auto next = branching_.cheapest_open(node.choices)) split(std::move(node), *next);
    }

    bool leave_to_parts(const Node& node, double within) {
        auto parts = other_parts(node, within);
        if (!parts) return false;
        for (auto& choices : *parts) {
            if (!parts_.insert(std::make_pair(node.root, choices)).second) continue;
            Node part{node.root, std::move(choices), node.relaxed};
            if (branching_.too_many(part.choices)) continue;
            relax(part, node.relaxed.values());
            keep_open(std::move(part), node.bound());
        }
        return true;
    }

    void split(Node node, std::size_t variable) {
        Node with = node;
        with.choices[variable] = Choice::in;
        branching_.shut_excluded(with.choices, variable);
        if (!branching_.too_many(with.choices)) {
            relax(with, node.relaxed.values());
            keep_open(std::move(with), node.bound());
        }
        Node without = std::move(node);
        const double parent = without.bound();
        const bool unused = branching_.is_unused(variable, without.relaxed.values());
        without.choices[variable] = Choice::out;
        if (!unused) {
            const std::vector<double> from = without.relaxed.values();
            relax(without, from);
        }
        keep_open(std::move(without), parent);
    }

    // A child is part of its parent, so it inherits the better bound where the solver stopped a little short.
    void keep_open(Node node, double parent_bound) {
        if (!node.relaxed.feasible()) return;
        node.relaxed.cost = std::max(node.relaxed.cost, parent_bound - limits_.slack);
        if (node.bound() < worst_kept() - limits_.slack) open_.push(std::move(node));
    }

    // What the relaxed solution uses, at full price: a real answer early, so that more can be cut off.
    void try_rounding(const Node& node) {
        Node rounded = node;
        rounded.choices = branching_.rounded(std::move(rounded.choices), node.relaxed.values(), limits_.used_share);
        if (branching_.too_many(rounded.choices) || !tried_.insert(std::make_pair(rounded.root, rounded.choices)).second) return;
        relax(rounded, node.relaxed.values());
        if (rounded.relaxed.feasible()) record(rounded);
    }

    void record(const Node& node) {
        auto fresh = answer_of(node);
        if (!fresh) return;
        auto& answers = result_.answers;
        std::erase_if(answers, [&](const Answer& old) { return displaces(*fresh, old); });
        found_at_ = result_.visited;
        answers.push_back(std::move(*fresh));
        std::stable_sort(answers.begin(), answers.end(), [](const Answer& a, const Answer& b) { return a.cost < b.cost; });
        if (answers.size() > limits_.answers) answers.resize(limits_.answers);
    }

    double last_cost() const { return result_.answers.empty() ? 0 : result_.answers.back().cost; }

    bool stopped() {
        if (!limits_.progress) return false;
        const double best = result_.answers.empty() ? std::numeric_limits<double>::infinity() : result_.answers.front().cost;
        result_.stopped = !limits_.progress(result_.visited, best);
        return result_.stopped;
    }

    Branching branching_;
    BranchLimits limits_;
    std::priority_queue<Node, std::vector<Node>, Later> open_;
    std::set<std::pair<std::size_t, Choices>> tried_, parts_;
    std::size_t found_at_ = 0;  // relaxations solved when the last answer was kept
    Result result_;
};

}  // namespace standin
