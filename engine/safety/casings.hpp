// Casings are of an animal too.
#pragma once

#include <string>
#include <vector>

#include "knowledge/index/kinds.hpp"
#include "knowledge/index/knowledge.hpp"
#include "standin/formula.hpp"
#include "standin/prediction.hpp"

namespace standin {

/// One for each casing beside the mass that is, or may be, of pork or beef where the mass holds none of it.
std::vector<CautionText> animals_of_casings(const Formula& formula, const Knowledge& knowledge);

/// The casing that is sold so wide as a rule: sheep, hog, beef.
std::string usual_casing(double mm, const Knowledge& knowledge);

/// Likewise of links of this formula, where the mass is of that animal or of pork, which goes into all of them; else empty: nothing tells.
std::string casing_presumed(const Formula& formula, const Knowledge& knowledge);

/// Whether links are meant by a width alone, and what is sold so wide is of that kind as a rule.
bool width_takes(const Kind& kind, const Formula& formula, const Knowledge& knowledge);

/// Takes the width of links away where no casing stands beside the mass.
void forget_width(Formula& formula, const Knowledge& knowledge);

}  // namespace standin
