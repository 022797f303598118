// A folder laid over the built-in knowledge may add dangers and tighten limits; it may take away none.
#pragma once

#include "knowledge/checks/check_rules.hpp"

namespace standin {

/// What in `over` says less of a danger than `base` does: an allergen or a caution dropped, a core temperature lowered, a limit raised.
void check_only_safer(const Records& base, const Records& over, const Complain& complain);

}  // namespace standin
