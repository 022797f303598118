// Allergens, cautions, caps and label of a predicted batch. Always filled in; nothing switches it off.
#pragma once

#include <string_view>

#include "evaluate/evaluator.hpp"
#include "knowledge/index/knowledge.hpp"
#include "standin/prediction.hpp"

namespace standin {

/// Adds allergens, cautions (general ones first) and the label draft to `prediction`, which must have been predicted from `formula`.
/// `rules` is the code of the rule set whose caps and cooking rules are held against it; empty: the general ones only. Allergens are
/// always those of every code.
void mark_safety(Prediction& prediction, const Formula& formula, const Knowledge& knowledge, std::string_view rules);

/// The same over the evaluator that `prediction` came from. Where that knows better of a kitchen, what the general figures say of safety
/// stays as well: a kitchen may add a caution and never takes one away.
void mark_safety(Prediction& prediction, const Formula& formula, const Evaluator& evaluator, std::string_view rules);

/// Whether a reading of a formula is told for somebody's health, so that it goes with whatever is made of the formula: raw milk, a step
/// that can hurt, an allergen in the words beside the lines.
bool is_of_safety(const Reason& told);

}  // namespace standin
