// What the freezer does to a mass, what of a glut to put into it, and what gives acid back at the plate.
#pragma once

#include <string>

#include "standin/band.hpp"
#include "standin/reason.hpp"

namespace standin {

/// One thing that freezing does to the raw mass.
struct FreezingNote {
    std::string id, text, source;
};

/// What to do with more of a food than today's batch takes.
struct KeepForLater {
    std::string ingredient, name;
    double yield = 1;  ///< g in the freezer for each g as picked
    Band months;       ///< at -18 C, for quality
    Reason reason{};
    std::string says;  ///< in words, in metric
    std::string source;
};

}  // namespace standin
