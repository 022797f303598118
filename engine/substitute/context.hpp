// What every part of the advisor works with.
#pragma once

#include "evaluate/batch.hpp"
#include "standin/engine.hpp"

namespace standin {

struct Context {
    Pantry& drawn;   ///< at all draws, for bands and chances
    Pantry& middle;  ///< at the middle of every band, for searching
    const Options& options;

    const Knowledge& knowledge() const { return drawn.knowledge(); }
    double constant(std::string_view id) const { return knowledge().parameter(id).mid; }
};

}  // namespace standin
