// Small problems cut out of real requests: a few moves of a random case, with everything the advisor works with around them.
#pragma once

#include <algorithm>
#include <numeric>

#include "adapt/moves/exclusive.hpp"
#include "adapt/search/rebalance.hpp"
#include "adapt/search/search.hpp"
#include "knowledge/index/swap_graph.hpp"
#include "support/cases.hpp"

class SmallProblem {
public:
    SmallProblem(std::uint64_t number, std::size_t moves) : evaluator_(knowledge(), 16, 1) {
        CaseMaker make(number);
        formula = make.formula();
        request.have = make.inventory(formula);
        request.wants = make.wants();
        const standin::Context context{evaluator_, options_};
        const auto stock = standin::Stock::of(formula, request, context);
        const standin::NominalBatch batch(formula, evaluator_.nominal());
        distance_.emplace(context, batch.total(), batch.state(), standin::read_wants(request.wants, knowledge()).value());
        problem = standin::make_problem(formula, *stock, graph(), *distance_, context);
        if (moves > 0) cut(moves, make);
    }

    const standin::Distance& distance() const { return *distance_; }
    const standin::Models& models() const { return evaluator_.nominal().models(); }

    standin::Formula formula;
    standin::AdaptRequest request;
    standin::Problem problem;

private:
    static const standin::SwapGraph& graph() {
        static const standin::SwapGraph all(knowledge());
        return all;
    }

    // Keeps a random choice of moves, in their order, and the limits that still bind.
    void cut(std::size_t most, CaseMaker& make) {
        std::vector<std::size_t> kept(problem.moves.size());
        std::iota(kept.begin(), kept.end(), std::size_t{0});
        while (kept.size() > most) kept.erase(kept.begin() + static_cast<std::ptrdiff_t>(make.below(kept.size())));
        std::vector<standin::Move> moves;
        for (const auto m : kept) moves.push_back(problem.moves[m]);
        // What stands for the same is named by its place, and the places are others now.
        for (auto& move : moves) {
            std::vector<std::size_t> still;
            for (const auto m : move.equivalents) {
                const auto place = std::find(kept.begin(), kept.end(), m);
                if (place != kept.end()) still.push_back(static_cast<std::size_t>(place - kept.begin()));
            }
            move.equivalents = std::move(still);
        }
        for (auto& limit : problem.constraints) {
            std::vector<double> still;
            for (const auto m : kept) still.push_back(limit.per_gram[m]);
            limit.per_gram = std::move(still);
        }
        problem.moves = std::move(moves);
        problem.exclusive = standin::exclusive_groups(problem, knowledge());
    }

    standin::Options options_;
    standin::Evaluator evaluator_;
    std::optional<standin::Distance> distance_;
};
