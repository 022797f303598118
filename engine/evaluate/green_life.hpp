// How long the raw mass stays green in the cold, and what would keep it longer.
#pragma once

#include <optional>

#include "evaluate/batch.hpp"
#include "standin/prediction.hpp"

namespace standin {

/// Nothing where the mass is not green when it is mixed.
std::optional<GreenLife> green_life_of(const Formula& formula, const NominalBatch& nominal, const SampledBatch& sampled,
                                       const Evaluator& evaluator);

}  // namespace standin
