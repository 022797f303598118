// Meat that is told to have its bone: "pork shoulder, bone in", "Schweineschulter mit Knochen".
#pragma once

#include <optional>
#include <string_view>
#include <utility>

#include "formula/line/line_text.hpp"
#include "knowledge/index/knowledge.hpp"

namespace standin {

/// Where a line says so, begin and end; "without the bone in" says no such thing.
std::optional<std::pair<std::size_t, std::size_t>> bone_said(std::string_view line, const Knowledge& knowledge);

/// Asks for the weight without it, where the line weighs meat for a mass; nothing elsewhere.
std::optional<Error> weighed_with_bone(std::string_view line, const Origin& origin, const Knowledge& knowledge);

}  // namespace standin
