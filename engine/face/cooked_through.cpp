#include "face/cooked_through.hpp"

#include "evaluate/predict.hpp"
#include "safety/core_temperature.hpp"

namespace standin {

Result<CheckedFormula> cooked_through(const Formula& formula, const Knowledge& knowledge, std::string_view rules) {
    auto checked = CheckedFormula::of(formula, knowledge);
    if (!checked || formula.process.core_curve.size() > 1) return checked;
    const CoreTemperature needed = demanded_core(weights_only(formula, knowledge), knowledge, rules);
    if (!needed.rule || formula.process.core_c.value_or(0) >= needed.core_c) return checked;
    Formula cooked = formula;
    cooked.process.core_needed_c = needed.core_c;
    return CheckedFormula::of(cooked, knowledge);
}

}  // namespace standin
