// The cook of a batch against the published times for Salmonella.
#pragma once

#include <optional>
#include <string>

#include "evaluate/batch.hpp"
#include "standin/prediction.hpp"

namespace standin {

struct CookJudged {
    std::optional<CookLethality> lethality;
    std::optional<Reason> why_not;    ///< absent where there is a figure
    std::optional<double> warming_h;  ///< of the core between the temperatures at which toxins form, at the slow end; absent: not known
};

/// Over the maker's core readings, or over an estimated warming of the core. No figure where no published table fits the meat, where the
/// core is hotter than the table goes and the rows there are do not settle it, and where the core warms so slowly that toxins may form:
/// killing what made them does not take them away. The table goes by the nominal batch.
CookJudged lethality_of(const Formula& formula, const NominalBatch& nominal, const Nominal& view);

}  // namespace standin
