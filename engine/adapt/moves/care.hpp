// What care with the leaves gives a want before anything is bought: a shorter blanch for the green, a squeeze for the bind.
#pragma once

#include <vector>

#include "adapt/distance/distance.hpp"
#include "substitute/stock.hpp"

namespace standin {

struct Care {
    Formula formula;           ///< line by line the one that was given, prepared with care
    std::vector<Reason> done;  ///< what that takes, in the order of the work
};

/// Of what is on hand, only what brings a want nearer by enough to be told; kept lines stay as they are.
Care prepared_with_care(const Formula& formula, const Distance& distance, const Stock& stock, const Context& context);

}  // namespace standin
