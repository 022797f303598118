// What the formula's own making has to do with what was tasted.
#pragma once

#include <vector>

#include "knowledge/readers/mending.hpp"
#include "mend/measured.hpp"
#include "mend/tastes.hpp"
#include "standin/mend.hpp"
#include "substitute/context.hpp"

namespace standin {

/// A cause that holds, with its record.
struct FoundCause {
    const CauseOfTaste* record = nullptr;
    MakingCause told;
    std::vector<std::string> foods;  ///< ids that it is about
    double cost = 0;                 ///< of the bind, 0-1, or of the green; of causes that a model weighs against each other
};

/// Of each record that holds of the mass, for the first word that it explains; in the order of the records. `needed` is the core
/// temperature that the meat needs.
std::vector<FoundCause> causes_of(const std::vector<Meant>& tastes, const Formula& mass, const MassAsMade& made, const CoreAsked& needed,
                                  const Mending& mending, const Context& context);

}  // namespace standin
