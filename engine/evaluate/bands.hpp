// What is shown of a property: the middle of everything, with the range of the draws around it.
#pragma once

#include <vector>

#include "evaluate/models.hpp"
#include "standin/prediction.hpp"

namespace standin {

/// The properties of a prediction. Tables, sentences and cautions then tell one figure for one thing.
void put_bands(Prediction& prediction, const State& middle, const std::vector<State>& states);

}  // namespace standin
