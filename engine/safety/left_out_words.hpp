// Advice in words beside what was left out: who cooks without milk is not told of cheese beside the plate. The one door for advice that the
// knowledge holds as text.
#pragma once

#include <functional>
#include <string>
#include <string_view>

#include "knowledge/index/knowledge.hpp"

namespace standin {

/// Whether a food may be named.
using MayBeNamed = std::function<bool(const Ingredient&)>;

/// Whether a text names a food, or a kind all of whose foods are such, that may not be named.
bool names_what_is_left_out(std::string_view text, const MayBeNamed& may_be_named, const Knowledge& knowledge);

/// The advice without its sentences, or the parts of them between semicolons, that name one.
std::string without_what_is_left_out(std::string_view advice, const MayBeNamed& may_be_named, const Knowledge& knowledge);

}  // namespace standin
