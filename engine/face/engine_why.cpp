// Why a property is what it is.
#include "evaluate/why.hpp"
#include "face/cooked_through.hpp"
#include "face/inside.hpp"

namespace standin {

template <class Asked>
Result<WhyAnswer> Engine::Inside::why(const Engine& engine, const Formula& formula, Asked what, const Setting& setting) const {
    auto prediction = engine.predict(formula, setting);
    if (!prediction) return Failure(prediction.error());
    const auto checked = cooked_through(formula, knowledge, asked(setting)->rules);
    if (!checked) return Failure(checked.error());
    WhyAnswer answer = why_of(*checked, what, *evaluator_for(formula));
    answer.prediction = std::move(*prediction);
    return answer;
}

Result<WhyAnswer> Engine::why(const Formula& formula, Property property, const Setting& setting) const {
    if (static_cast<std::size_t>(property) >= property_count) return failure(Trouble::usage, "no such property");
    return inside_->why(*this, formula, property, setting);
}

Result<WhyAnswer> Engine::why(const Formula& formula, ColourPart part, const Setting& setting) const {
    if (static_cast<std::size_t>(part) >= colour_part_count) return failure(Trouble::usage, "no such part of a colour");
    return inside_->why(*this, formula, part, setting);
}

}  // namespace standin
