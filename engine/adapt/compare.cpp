#include "adapt/compare.hpp"

#include "adapt/difference.hpp"
#include "evaluate/predict.hpp"
#include "safety/safety.hpp"

namespace standin {

CompareAnswer compare_formulas(const std::vector<Formula>& formulas, const Context& context) {
    CompareAnswer answer;
    std::vector<State> first;
    for (const auto& formula : formulas) {
        const Batch batch(formula, context.drawn);
        std::vector<State> states = states_of(batch, context.drawn.models());
        answer.formulas.push_back(predict_formula(formula, batch, states, context.drawn));
        mark_safety(answer.formulas.back(), formula, context.knowledge(), context.options.rules);
        if (first.empty()) first = std::move(states);
        else {
            const Differences d = differences_between(first, states);
            answer.from_first.push_back({d.properties, d.rested, d.cooked});
        }
    }
    return answer;
}

}  // namespace standin
