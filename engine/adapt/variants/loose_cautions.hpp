// Cautions of a mass that is to be looser: what a caution says stays, how to make it bind does not.
#pragma once

#include <vector>

#include "standin/prediction.hpp"

namespace standin {

/// Of the cautions that acid loosens the mass the first sentence stays. Where the meat sets in the acid every word is kept: it may look
/// cooked.
void leave_out_how_to_bind(std::vector<CautionText>& cautions);

}  // namespace standin
