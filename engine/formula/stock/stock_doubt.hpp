// Whether a line of a list that is not understood may be set aside, or stops the list.
#pragma once

#include <string_view>

#include "knowledge/index/knowledge.hpp"

namespace standin {

/// A danger or one slip of the pen away from it, a warning, a word of exclusion, or a food that is dangerous as it is named: what such a
/// line says must not be lost.
bool never_set_aside(std::string_view written, const Knowledge& knowledge);

/// Likewise where the only thing said against it is that it looks like a plant that kills.
bool never_set_aside_but_for_looks(std::string_view written, const Knowledge& knowledge);

/// Whether it says that something is not there, or that something may be in it.
bool warns_or_excludes(std::string_view written, const Knowledge& knowledge);

/// Whether all that is said against a line hurts nobody while it goes into nothing: a word of two meanings, a plant that looks like one
/// that kills, what is for baking.
bool harms_nobody_aside(std::string_view written, const Knowledge& knowledge);

}  // namespace standin
