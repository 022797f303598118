// The one door for formulas that a program may have put together by hand (requests: checked_request.hpp). What has come through it has
// known ids, numbers that are numbers and in order, and text that is text: the rooms below rely on that and do not look again.
#pragma once

#include <vector>

#include "knowledge/index/knowledge.hpp"
#include "standin/formula.hpp"
#include "standin/result.hpp"

namespace standin {

class CheckedFormula {
public:
    /// Every fault is named: the first in the message, the others as hints. The formula must also be a sausage: lines, and enough meat
    /// among them.
    static Result<CheckedFormula> of(const Formula& formula, const Knowledge& knowledge);

    const Formula& formula() const { return formula_; }
    /// The food of a line.
    const Ingredient& ingredient(std::size_t line) const { return *ingredients_[line]; }

private:
    CheckedFormula(const Formula& formula, std::vector<const Ingredient*> ingredients)
        : formula_(formula), ingredients_(std::move(ingredients)) {}

    Formula formula_;
    std::vector<const Ingredient*> ingredients_;
};

/// Everything wrong with it, empty when it is sound.
std::vector<std::string> faults_in(const Formula& formula, const Knowledge& knowledge);

/// The faults as one error: the first as its message, the others as hints. Nothing where there are none.
std::optional<Error> as_error(const std::vector<std::string>& faults, Trouble trouble);

}  // namespace standin
