// What a food takes from its kind where nothing of its own is on record: one number for many, with a source of its own, instead of the
// same guess written down for each.
#pragma once

#include "knowledge/records/records.hpp"

namespace standin {

/// Fills what records leave open, from rules in knowledge/models: pH by tissue or animal, buffering by protein and ash or by animal, what a
/// binder holds by its solids, the green of a leaf, the strength of what is fresh, the spread of pods and lots of chiles, a tablespoon of
/// three teaspoons, weight for weight. What stands on record is kept. The source of each such figure is that of its rule; a rule that is
/// not there fills nothing.
void fill_defaults(Records& records);

}  // namespace standin
