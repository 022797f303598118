#include "face/inside.hpp"
#include "standin/engine.hpp"
#include "worksheet/sheet.hpp"

namespace standin {

Result<Sheet> Engine::sheet(const Formula& formula, const SheetRequest& request, const Setting& setting) const {
    const auto options = inside_->asked(setting);
    if (!options) return Failure(options.error());
    const auto checked = CheckedFormula::of(formula, inside_->knowledge);
    if (!checked) return Failure(checked.error());
    if (auto wrong = as_error(faults_in(request), Trouble::usage)) return Failure(std::move(*wrong));
    return sheet_of(*checked, request, inside_->evaluator, options->rules);
}

}  // namespace standin
