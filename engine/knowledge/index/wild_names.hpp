// Names that are not known here and stand for what somebody picked: a mushroom, a wild plant. No harmless name is offered for them.
#pragma once

#include <string_view>

#include "knowledge/index/knowledge.hpp"

namespace standin {

/// Whether a name says so: "foraged leaves", "Raukopfpilz", "inci çiçeği".
bool looks_gathered(std::string_view name, const Knowledge& knowledge);

/// Whether `known` may be offered for a name that is not known: for a leaf, a herb or a mushroom, and for whatever looks gathered, only
/// where one slip of the pen lies between them, and no poison is as near.
bool may_be_offered(std::string_view name, const Ingredient& known, const Knowledge& knowledge);

}  // namespace standin
