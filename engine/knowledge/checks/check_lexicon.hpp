// Cross checks of the lexicon: patterns that can match, ids that exist, allergens that a rule lists.
#pragma once

#include <vector>

#include "knowledge/checks/check.hpp"

namespace standin {

void check_lexicon(const Records& records, const Places& places, std::vector<Finding>& findings);

}  // namespace standin
