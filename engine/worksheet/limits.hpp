// The sheet orders no danger: its temperatures and times stay within the rules of the making.
#pragma once

#include <string_view>

#include "knowledge/index/knowledge.hpp"
#include "standin/sheet.hpp"

namespace standin {

/// Holds the steps of a sheet to the limits for its batch, and notes each place where it overrides the formula. A rest that no rule allows
/// is left out.
void keep_to_rules(Sheet& sheet, const Knowledge& knowledge, std::string_view rules);

}  // namespace standin
