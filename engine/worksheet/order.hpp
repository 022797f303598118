// The order of the preparations: who waits longest starts first, and what is done alike is done together.
#pragma once

#include <vector>

#include "worksheet/parts.hpp"

namespace standin {

/// One preparation of one or more chains, by their index and by which of their steps it is.
struct Job {
    Prepared step;
    std::vector<std::pair<std::size_t, std::size_t>> of;  ///< chain, step
};

/// Every step of every chain once, each chain's in its own order. At each turn the preparation is done of which no other chain still has
/// to get that far; among those the one with most time still before it (soaking, roasting, cooling), then the one that stands first in
/// knowledge/preparations.json.
std::vector<Job> jobs_of(const std::vector<Chain>& chains, const Knowledge& knowledge);

}  // namespace standin
