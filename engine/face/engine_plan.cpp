#include "evaluate/checked_request.hpp"
#include "face/cooked_through.hpp"
#include "face/inside.hpp"
#include "face/kitchen_notes.hpp"
#include "plan/plan.hpp"

namespace standin {

Result<PlanAnswer> plan(const Engine& engine, const PlanRequest& request, const Setting& setting) {
    if (request.formulas.empty()) return failure(Trouble::usage, "a plan needs at least one formula");
    const auto asked = asked_of(engine, request.formulas.front(), setting);
    if (!asked) return Failure(asked.error());
    const Knowledge& knowledge = asked->evaluator->knowledge();
    std::vector<CheckedFormula> formulas;
    std::vector<const Formula*> told;
    for (const auto& formula : request.formulas) {
        auto checked = cooked_through(formula, knowledge, asked->options.rules);
        if (!checked) return Failure(checked.error());
        formulas.push_back(std::move(*checked));
        told.push_back(&formula);
    }
    if (auto wrong = as_error(faults_in(request, knowledge), Trouble::usage)) return Failure(std::move(*wrong));
    auto answer = plan_of(formulas, request, {*asked->evaluator, asked->options});
    if (!answer) return answer;
    answer->read_as.insert(answer->read_as.end(), request.have.notes.begin(), request.have.notes.end());
    const auto notes = kitchen_notes(asked->kitchen, told, *asked->evaluator);
    answer->read_as.insert(answer->read_as.end(), notes.begin(), notes.end());
    return answer;
}

}  // namespace standin
