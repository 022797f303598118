// From a formula to what the batch will be. Safety words are added by the room above.
#pragma once

#include "evaluate/batch.hpp"
#include "standin/prediction.hpp"

namespace standin {

/// A formula must have come through CheckedFormula, or have been made from one.
Prediction predict_formula(const Formula& formula, const Evaluator& evaluator);
/// The same from a batch of `formula` and its states, where the caller needs those as well.
Prediction predict_formula(const Formula& formula, const SampledBatch& batch, const std::vector<State>& states, const Evaluator& evaluator);

/// Only what is weighed: title, lines and weights.
Prediction weights_only(const Formula& formula, const Knowledge& knowledge);

/// One property at every draw.
std::vector<double> values_of(const std::vector<State>& states, Property property);

/// `nominal` with the range of `draws` around it.
Band band_around(double nominal, std::vector<double> draws);

/// "blanched 3 min", as people read it.
std::string describe(const Prepared& prepared, const Knowledge& knowledge);

}  // namespace standin
