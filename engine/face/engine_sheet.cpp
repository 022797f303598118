#include "evaluate/checked_request.hpp"
#include "face/cooked_through.hpp"
#include "face/inside.hpp"
#include "face/kitchen_notes.hpp"
#include "standin/engine.hpp"
#include "worksheet/sheet.hpp"

namespace standin {

Result<Sheet> Engine::sheet(const Formula& formula, const SheetRequest& request, const Setting& setting) const {
    const auto options = inside_->asked(setting);
    if (!options) return Failure(options.error());
    const auto checked = cooked_through(formula, inside_->knowledge, options->rules);
    if (!checked) return Failure(checked.error());
    if (auto wrong = as_error(faults_in(request), Trouble::usage)) return Failure(std::move(*wrong));
    const auto evaluator = inside_->evaluator_for(formula);
    auto sheet = sheet_of(*checked, request, *evaluator, options->rules);
    if (sheet)
        for (auto& note : kitchen_notes(inside_->kitchen, {&formula}, *evaluator)) sheet->prediction.read_as.push_back(std::move(note));
    return sheet;
}

}  // namespace standin
