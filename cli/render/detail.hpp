// How much of an answer a page tells, and in which units.
#pragma once

#include "standin/reason.hpp"

namespace standin::cli {

struct Detail {
    Units units = Units::metric;
    bool full = false;  ///< the numbers behind it as well
};

}  // namespace standin::cli
