// From what a line weighs to what must be picked or bought for it.
#pragma once

#include "knowledge/index/knowledge.hpp"
#include "standin/formula.hpp"

namespace standin {

/// Whether the line weighs its food before stalks, skin and the like come off.
bool weighed_untrimmed(const Line& line);

/// Grams as picked or bought behind one gram as the line weighs it: what its preparations take off where it is weighed after them, and
/// what is cut away of it before it is weighed.
double bought_per_gram(const Line& line, const Knowledge& knowledge);

/// The same as a list of what is on hand counts it: a herb as it lies on the board, in the formula as on the list.
double listed_per_gram(const Line& line, const Knowledge& knowledge);

}  // namespace standin
