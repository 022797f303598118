// From a fact as written to the band it stands for, of one food.
#pragma once

#include <string>

#include "formula/amounts/fact_text.hpp"
#include "knowledge/index/knowledge.hpp"
#include "standin/reason.hpp"
#include "standin/result.hpp"

namespace standin {

/// A figure with the spread that such a reading has (knowledge/models/kitchen.json); a range as it was written.
Band fact_spread(const FactText& fact, const Knowledge& knowledge);

/// pH, % acid or mg/kg of the food as weighed; or what is wrong, with the range that was expected.
Result<Band> fact_band(const FactText& fact, const Ingredient& ingredient, const Knowledge& knowledge);

/// Whether "6 %" or "hot" by itself means the fact beside this food.
bool fits_bare(const FactText& fact, const Ingredient& ingredient);

/// What had to be presumed; empty where nothing had.
std::optional<Reason> fact_note(const FactText& fact, const Ingredient& ingredient, const Band& band);

}  // namespace standin
