// Casings are of an animal too.
#pragma once

#include <vector>

#include "knowledge/knowledge.hpp"
#include "standin/formula.hpp"
#include "standin/prediction.hpp"

namespace standin {

/// One for each casing beside the mass that is, or may be, of pork or beef where the mass holds none of it.
std::vector<CautionText> animals_of_casings(const Formula& formula, const Knowledge& knowledge);

}  // namespace standin
