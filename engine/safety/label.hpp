// The draft ingredient list of a batch.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "knowledge/index/knowledge.hpp"
#include "standin/prediction.hpp"

namespace standin {

/// Common names in descending weight as weighed, equal weights in the formula's order; parts of compound ingredients in brackets;
/// allergens in capitals, added in brackets where the name does not say them. What makes 2 % or less may stand in any order at the end
/// (21 CFR 101.4(a)(2); less than 2 % in the EU), so it simply stays in order. `prediction.allergens` must be filled in: it decides
/// whether sulphites are named,
/// by the code `rules`, where it is one that lists them.
/// `of_raw_milk`: ids of the foods that the formula calls raw milk, or made of it.
std::string label_of(const Prediction& prediction, const Knowledge& knowledge, std::string_view rules = {},
                     const std::vector<std::string>& of_raw_milk = {});

}  // namespace standin
