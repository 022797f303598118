// What a shop would give for lines that the first answer leaves out because nothing on the list can stand in for them.
#pragma once

#include <vector>

#include "knowledge/index/swap_graph.hpp"
#include "standin/advice.hpp"
#include "substitute/context.hpp"
#include "substitute/stock.hpp"

namespace standin {

/// A reason for each line left out of `first`, the usual stand-in and its weight. Nothing that is excluded, said to be missing, seldom
/// sold or gathered, and nothing that brings an allergen which the formula has not.
std::vector<Reason> from_a_shop(const Variant& first, const Formula& formula, const Stock& stock, const SwapGraph& graph,
                                const Context& context);

}  // namespace standin
