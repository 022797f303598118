// Packets to look at where somebody must go without: what a bought food holds one time in many.
#pragma once

#include <string>
#include <vector>

#include "knowledge/knowledge.hpp"
#include "standin/prediction.hpp"

namespace standin {

/// Adds to the allergens what the packets of its foods are to be looked at for, of what the words of `without` leave out and of nothing
/// else: chicken stock for wheat and milk where neither may be in it.
void tell_of_packets(Prediction& prediction, const std::vector<std::string>& without, const Knowledge& knowledge);

}  // namespace standin
