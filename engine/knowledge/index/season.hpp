// When a food is in season where the maker lives.
#pragma once

#include <optional>
#include <vector>

#include "knowledge/records/records.hpp"

namespace standin {

/// The months (1-12) of `ingredient` where seasons lie `shift` months later than in the temperate north (6: the south), in their order.
std::vector<int> season_of(const Ingredient& ingredient, int shift);

/// Nothing where the record names no season: it is there all year, or nobody said.
std::optional<bool> in_season(const Ingredient& ingredient, int month, int shift);

}  // namespace standin
