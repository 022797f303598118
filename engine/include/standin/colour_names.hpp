// What people say of a colour, by an open survey of colour names.
#pragma once

#include <string>
#include <vector>

#include "standin/prediction.hpp"

namespace standin {

struct SaidOfColour {
    std::string word;
    double share = 0;  ///< of those who named colours like it, 0-1
};

/// Most first, shares that add up to 1. Empty for red and pink meat, which is called by what makers say, not by the survey.
std::vector<SaidOfColour> said_of(const PredictedColour& colour);

}  // namespace standin
