// What stands beside an amount and is none: "at least 100 g ice", and what it cost, "spinach 1 kg @ 3.50".
#pragma once

#include <string>

#include "knowledge/index/knowledge.hpp"

namespace standin {

/// Takes the price out of the line, which keeps its length, and gives it as written; empty where there is none.
std::string take_price(std::string& line, const Knowledge& knowledge);

/// Takes out all that stands beside the amount and tells nothing of the food.
void take_beside_amount(std::string& line, const Knowledge& knowledge);

}  // namespace standin
