// Whether all the flesh of a batch is fish.
#pragma once

#include "models/material.hpp"

namespace standin {

/// Fish or shellfish and no other meat; false where there is none at all.
inline bool all_fish(const Material& total) {
    constexpr double slack = 1e-9;  // g
    return total[Amount::meat] > 0 && total[Species::fish] + total[Species::crustacean] >= total[Amount::meat] - slack;
}

}  // namespace standin
