// How a food goes into a mass that is mixed already.
#pragma once

#include "knowledge/index/knowledge.hpp"
#include "knowledge/readers/mending.hpp"
#include "standin/mend.hpp"

namespace standin {

/// `grams` of `food` as it goes in: dissolved, stirred, chopped, with the water that takes.
Ingoing ingoing(const Line& food, double grams, bool fresh, const Mending& mending, const Knowledge& knowledge, bool wet = false);

/// How such a food goes in; nothing where no record tells. `loses`: the mass is to lose less in the pan.
const BringIn* way_in(const Ingredient& food, const Mending& mending, bool wet);

/// `mass` with it: the line of that food heavier, or a line of its own; its water likewise.
void put_in(Formula& mass, const Line& food, const Ingoing& what);

}  // namespace standin
