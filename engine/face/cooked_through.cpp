#include "face/cooked_through.hpp"

#include "safety/core_temperature.hpp"

namespace standin {

Result<CheckedFormula> cooked_through(const Formula& formula, const Knowledge& knowledge, std::string_view rules) {
    auto checked = CheckedFormula::of(formula, knowledge);
    const auto needed = checked ? core_beyond_the_written(formula, knowledge, rules) : std::nullopt;
    if (!needed) return checked;
    Formula cooked = formula;
    cooked.process.core_needed_c = needed;
    return CheckedFormula::of(cooked, knowledge);
}

}  // namespace standin
