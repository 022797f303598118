// Eggs on a list give white or yolk to a formula that has a line of it.
#pragma once

#include "formula/stock/stock_names.hpp"
#include "standin/formula.hpp"

namespace standin {

/// Parts the whole eggs of a list for the formula's egg white or yolk, where the list has none of it and no line takes the egg whole. Told
/// in the notes, with what is left over.
void part_eggs(Inventory& list, const StockNamer& namer, const Knowledge& knowledge);

}  // namespace standin
