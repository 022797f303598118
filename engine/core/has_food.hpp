// Whether a formula has a food, however it is prepared.
#pragma once

#include <algorithm>
#include <string_view>

#include "standin/formula.hpp"

namespace standin {

inline bool has_food(const Formula& formula, std::string_view ingredient) {
    return std::any_of(formula.lines.begin(), formula.lines.end(), [&](const Line& line) { return line.ingredient == ingredient; });
}

}  // namespace standin
