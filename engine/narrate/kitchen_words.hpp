// A fact of the kitchen as a sentence for the pages that it changed.
#pragma once

#include <string>

#include "knowledge/index/knowledge.hpp"
#include "standin/kitchen.hpp"

namespace standin {

/// "kitchen.txt: this pork shoulder has 25 % fat"
std::string kitchen_words(const KitchenFact& fact, const std::string& file, const Knowledge& knowledge);

/// Where a loss in the pan says nothing of a sausage that is cooked otherwise.
/// A loss "in the pan" or "when fried" tells of frying alone; one "on cooking" of whatever way the sausage is cooked.
bool loss_in_the_pan(const KitchenFact& fact);

std::string pan_loss_unused(const KitchenFact& fact, const std::string& file);

/// Where what was measured lies beyond what is known of such a batch: `said` against `foretold`.
std::string contradicts(const KitchenFact& fact, const std::string& file, const Band& foretold);

}  // namespace standin
