// What a tin or jar holds beside its water: its label tells the weight of both.
#pragma once

#include "formula/amounts/amount.hpp"
#include "formula/amounts/shares.hpp"
#include "formula/food/line_prepared.hpp"

namespace standin {

/// Cooked pulses are sold in water that nobody puts into a sausage.
bool lies_in_water(const Ingredient& ingredient);

/// Takes from `weighed` the water that the label weighs with the food, or tells that some may be counted.
void drain_tin(const MeasuredFood& food, Weighed& weighed, std::vector<LineDoubt>& doubts);

}  // namespace standin
