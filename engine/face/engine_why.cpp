// Why a property is what it is.
#include "evaluate/why.hpp"
#include "face/cooked_through.hpp"
#include "face/inside.hpp"

namespace standin {

Result<WhyAnswer> Engine::why(const Formula& formula, Property property, const Setting& setting) const {
    if (static_cast<std::size_t>(property) >= property_count) return failure(Trouble::usage, "no such property");
    auto prediction = predict(formula, setting);
    if (!prediction) return Failure(prediction.error());
    const auto checked = cooked_through(formula, inside_->knowledge, inside_->asked(setting)->rules);
    if (!checked) return Failure(checked.error());
    WhyAnswer answer = why_of(*checked, property, *inside_->evaluator_for(formula));
    answer.prediction = std::move(*prediction);
    return answer;
}

Result<WhyAnswer> Engine::why(const Formula& formula, ColourPart part, const Setting& setting) const {
    if (static_cast<std::size_t>(part) >= colour_part_count) return failure(Trouble::usage, "no such part of a colour");
    auto prediction = predict(formula, setting);
    if (!prediction) return Failure(prediction.error());
    const auto checked = cooked_through(formula, inside_->knowledge, inside_->asked(setting)->rules);
    if (!checked) return Failure(checked.error());
    WhyAnswer answer = why_of(*checked, part, *inside_->evaluator_for(formula));
    answer.prediction = std::move(*prediction);
    return answer;
}

}  // namespace standin
