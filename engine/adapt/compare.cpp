#include "adapt/compare.hpp"

#include "adapt/distance/difference.hpp"
#include "adapt/own_plan.hpp"
#include "evaluate/predict.hpp"
#include "safety/page.hpp"
#include "safety/safety.hpp"

namespace standin {

CompareAnswer compare_formulas(const std::vector<CheckedFormula>& formulas, const Context& context) {
    CompareAnswer answer;
    std::vector<State> first;
    OnPage page;
    for (const auto& checked : formulas) {
        const Formula& formula = checked.formula();
        const SampledBatch batch(formula, context.sampled());
        std::vector<State> states = batch.states();
        answer.formulas.push_back(predict_formula(formula, batch, states, context.evaluator));
        mark_safety(answer.formulas.back(), formula, context.evaluator, context.options.rules);
        page.add(answer.formulas.back());
        if (first.empty()) first = std::move(states);
        else {
            const Differences d = differences_between(first, states);
            answer.from_first.push_back({d.properties, d.rested, d.cooked, distance_of_plan(formulas.front().formula(), formula, context)});
        }
    }
    answer.on_page = page.safety();
    return answer;
}

}  // namespace standin
