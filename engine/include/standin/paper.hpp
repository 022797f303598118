// What goes beside an answer onto paper: the rest of the draft label, what the freezer does, what it costs.
#pragma once

#include <vector>

#include "standin/cold_store.hpp"
#include "standin/cost.hpp"
#include "standin/label.hpp"

namespace standin {

/// Of one formula.
struct Paper {
    LabelDraft draft;
    std::vector<FreezingNote> freezing;  ///< what the freezer does to the raw mass
};

}  // namespace standin
