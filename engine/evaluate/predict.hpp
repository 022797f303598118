// From a formula to what the batch will be. Safety words are added by the room above.
#pragma once

#include "evaluate/batch.hpp"
#include "standin/prediction.hpp"

namespace standin {

/// A formula must have lines and some mass; meat is asked for by `require_meat`.
Prediction predict_formula(const Formula& formula, Pantry& pantry);
/// The same from a batch of `formula` and its states, where the caller needs those as well.
Prediction predict_formula(const Formula& formula, const Batch& batch, const std::vector<State>& states, Pantry& pantry);

/// States at every draw, for bands of differences.
std::vector<State> states_of(const Batch& batch, const Models& models);

/// One property at every draw.
std::vector<double> values_of(const std::vector<State>& states, Property property);

/// An error that names what is missing when a formula cannot be a sausage: no lines, no meat, absurd weights.
Result<bool> check_formula(const Formula& formula, const Knowledge& knowledge);

/// "blanched 3 min", as people read it.
std::string describe(const Prepared& prepared, const Knowledge& knowledge);

}  // namespace standin
