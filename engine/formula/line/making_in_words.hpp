// What a method says of the making without a figure: "mix with the salt until sticky, add the vinegar last", "stir just to combine".
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "knowledge/index/knowledge.hpp"
#include "standin/process.hpp"

namespace standin {

/// The order of salt and acid, the mixing and how cold the mass is while it is mixed, of which the sentences tell; the last word counts.
/// Nothing else of the process is filled.
Process making_in_words(const std::vector<std::string>& method, const Knowledge& knowledge);

/// Meat that stands in something sour before it is salted and mixed: that is no rest of the mixed mass.
bool steeps_meat_in_acid(std::string_view sentence, const Knowledge& knowledge);

}  // namespace standin
