// How much of an answer a page tells, and in which units.
#pragma once

#include "render/extras.hpp"
#include "standin/reason.hpp"

namespace standin::cli {

struct Detail {
    Units units = Units::metric;
    bool full = false;  ///< the numbers behind it as well
    Extras beside{};
};

}  // namespace standin::cli
