#include "adapt/variants/variant_maker.hpp"

#include <algorithm>
#include <cmath>

#include "adapt/distance/difference.hpp"
#include "adapt/distance/met.hpp"
#include "adapt/distance/nearness.hpp"
#include "adapt/goals/request.hpp"
#include "adapt/moves/losses.hpp"
#include "adapt/search/rebalance.hpp"
#include "adapt/variants/alternatives.hpp"
#include "adapt/variants/compared.hpp"
#include "adapt/variants/edits_beside.hpp"
#include "adapt/variants/explain.hpp"
#include "adapt/variants/left_out_notes.hpp"
#include "adapt/variants/loose_cautions.hpp"
#include "adapt/variants/missing_salt.hpp"
#include "adapt/variants/still_short.hpp"
#include "adapt/variants/title_food.hpp"
#include "adapt/variants/variant_name.hpp"
#include "core/band.hpp"
#include "evaluate/predict.hpp"
#include "safety/allergens.hpp"
#include "safety/packets.hpp"
#include "safety/page.hpp"
#include "safety/safety.hpp"

namespace standin {

Prediction VariantMaker::predicted(const Formula& formula, const SampledBatch& batch, const std::vector<State>& states) const {
    Prediction p = predict_formula(formula, batch, states, context_.evaluator);
    mark_safety(p, formula, context_.evaluator, context_.options.rules);
    if (any_asks(distance_.goals(), Property::bind, Goal::Kind::at_most)) leave_out_how_to_bind(p.cautions);
    return p;
}

std::vector<WantResult> VariantMaker::judged_wants(const Prediction& base, const Prediction& after,
                                                   const std::vector<State>& states) const {
    std::vector<WantResult> wants;
    for (const auto& goal : distance_.goals())
        wants.push_back(judged(goal, distance_, base.properties[goal.property].mid, after.properties[goal.property], base_states_, states,
                               request_.sure));
    tell_all_together(wants, distance_.goals(), distance_, base_states_, states);
    return wants;
}

Variant VariantMaker::variant_of(WeighedPlan tried, const Problem& problem, const Prediction& base) const {
    Variant v;
    const Plan& plan = tried.plan;
    const auto hotter = cook_through(tried.built.formula, base, context_);
    if (cook_as_needed(tried.built.formula, context_) || hotter) {
        tried.batch = SampledBatch(tried.built.formula, context_.sampled());
        tried.states = tried.batch.states();
    }
    const auto lost = lost_shares(problem, plan.grams);
    Compared compared = compared_with(formula_, tried.built, problem, lost, context_);
    // Of the weights as rounded; what is felt leaves out what is missed of a want, which is told as that.
    const double square = distance_.square(compared.variant, compared.after);
    v.felt = std::sqrt(std::max(0.0, square - distance_.wants_squared(compared.after)));
    // The number that is shown is the one that the verdict goes by.
    const double whole = std::sqrt(square + plan.price + lost_square(problem, plan.grams));
    v.distance = as_named(whole, distance_, compared.after);
    v.nearness = nearness_of(v.distance, context_);
    v.table_reason = at_the_table(distance_, compared);
    v.table = in_full(v.table_reason);
    v.prediction = predicted(tried.built.formula, tried.batch, tried.states);
    tell_of_packets(v.prediction, request_.without, context_.knowledge());
    for (auto& gone : title_foods_gone(formula_, tried.built.formula, v.prediction.cautions, context_.knowledge()))
        v.prediction.cautions.push_back(std::move(gone));
    // Reasons quote the medians that stand in the tables, not the middle draw the search works with.
    for_each_property([&](Property p) {
        compared.before.properties[p] = base.properties[p].mid;
        compared.after.properties[p] = v.prediction.properties[p].mid;
    });
    v.edits = explain_edits(tried.built, problem, hard_goals(distance_), compared,
                            alternatives_to(plan, problem, Rebalancer(problem, distance_, context_.nominal().models())), stock_, context_);
    leave_out_of_notes(v.edits, formula_, request_, stock_, context_.knowledge());
    if (hotter) v.edits.push_back(*hotter);
    for (auto& edit : without_all_beside(formula_, stock_)) v.edits.push_back(std::move(edit));
    v.new_allergens = new_allergens(base, v.prediction);
    v.new_cautions = new_cautions(base, v.prediction);
    v.gives_back = what_gives_back(formula_, distance_, compared, graph_, stock_, context_);
    if (auto salt = salt_would_bind(formula_, tried.built.formula.process, distance_, context_))
        v.gives_back.insert(v.gives_back.begin(), std::move(*salt));
    for (auto& short_of : what_is_still_short(tried.built.formula, distance_, v.prediction, context_))
        v.gives_back.insert(v.gives_back.begin(), std::move(short_of));
    v.formula = std::move(tried.built.formula);
    name_variant(v.formula, formula_, v.edits, request_.wants, context_.knowledge());
    // What the title says and no line holds any more, told among the cautions, is no name for what is made now.
    if (std::any_of(v.new_cautions.begin(), v.new_cautions.end(),
                    [](const CautionText& c) { return c.reason.kind == ReasonKind::title_without_animal; }))
        name_as_another(v.formula);
    put_on_the_plate(v.formula, v.gives_back);
    v.prediction.title = v.formula.title;
    const Differences d = differences_between(base_states_, tried.states);
    v.differences = d.properties;
    v.colour_rested = d.rested;
    v.colour_cooked = d.cooked;
    v.wants = judged_wants(base, v.prediction, tried.states);
    return v;
}

}  // namespace standin
