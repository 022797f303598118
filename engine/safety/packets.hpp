// Packets to look at where somebody must go without: what a bought food holds one time in many.
#pragma once

#include <set>
#include <string>
#include <vector>

#include "knowledge/index/kinds.hpp"
#include "standin/prediction.hpp"

namespace standin {

/// Ids of the foods of which a packet is to be looked at for what `kind` takes in, and that are not of it themselves.
std::set<std::string> packets_to_look_at(const Kind& kind, const Knowledge& knowledge);

/// Adds to the allergens what the packets of its foods are to be looked at for, of what the words of `without` leave out and of nothing
/// else: chicken stock for wheat and milk where neither may be in it.
void tell_of_packets(Prediction& prediction, const std::vector<std::string>& without, const Knowledge& knowledge);

}  // namespace standin
