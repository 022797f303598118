// The cook of a batch against the published times for Salmonella.
#pragma once

#include <optional>

#include "evaluate/batch.hpp"
#include "standin/prediction.hpp"

namespace standin {

/// Over the maker's core readings, or over an estimated warming of the core; nothing where no published table fits the meat.
/// The table goes by the nominal batch.
std::optional<CookLethality> lethality_of(const Formula& formula, const NominalBatch& nominal, const SampledBatch& sampled,
                                          const Evaluator& evaluator);

}  // namespace standin
