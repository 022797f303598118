// A plan as the variant that is shown: predicted, with what each edit does and why, and how far it is from the base.
#pragma once

#include <vector>

#include "adapt/distance/distance.hpp"
#include "adapt/moves/problem.hpp"
#include "adapt/variants/drawn_plans.hpp"
#include "evaluate/batch.hpp"
#include "knowledge/index/swap_graph.hpp"
#include "standin/advice.hpp"
#include "substitute/context.hpp"
#include "substitute/stock.hpp"

namespace standin {

class VariantMaker {
public:
    /// All of it is lent for as long as this lives.
    VariantMaker(const Formula& base, const AdaptRequest& request, const std::vector<State>& base_states, const Distance& distance,
                 const Stock& stock, const SwapGraph& graph, const Context& context)
        : formula_(base),
          request_(request),
          base_states_(base_states),
          distance_(distance),
          stock_(stock),
          graph_(graph),
          context_(context) {}

    /// With the safety that its page tells.
    Prediction predicted(const Formula& formula, const SampledBatch& batch, const std::vector<State>& states) const;

    /// Every want, by the draws of the base and these.
    std::vector<WantResult> judged_wants(const Prediction& base, const Prediction& after, const std::vector<State>& states) const;

    /// `problem` is the one whose plan it is; `base` is predicted of the base.
    Variant variant_of(WeighedPlan tried, const Problem& problem, const Prediction& base) const;

private:
    const Formula& formula_;
    const AdaptRequest& request_;
    const std::vector<State>& base_states_;
    const Distance& distance_;
    const Stock& stock_;
    const SwapGraph& graph_;
    const Context& context_;
};

}  // namespace standin
