// What a list has of one food.
#pragma once

#include <algorithm>
#include <string>

#include "standin/formula.hpp"

namespace standin {

/// Null where it is not on the list.
inline const InventoryItem* item(const Inventory& stock, const std::string& id) {
    const auto at = std::find_if(stock.items.begin(), stock.items.end(), [&](const auto& one) { return one.ingredient == id; });
    return at == stock.items.end() ? nullptr : &*at;
}

}  // namespace standin
