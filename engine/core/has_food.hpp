// Whether a formula, or a list of what is on hand, has a food, however it is prepared.
#pragma once

#include <algorithm>
#include <string_view>

#include "standin/formula.hpp"

namespace standin {

inline bool has_food(const Formula& formula, std::string_view ingredient) {
    return std::any_of(formula.lines.begin(), formula.lines.end(), [&](const Line& line) { return line.ingredient == ingredient; });
}

inline bool has_food(const Inventory& have, std::string_view ingredient) {
    return std::any_of(have.items.begin(), have.items.end(), [&](const InventoryItem& item) { return item.ingredient == ingredient; });
}

}  // namespace standin
