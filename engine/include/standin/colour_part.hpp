// What of a colour can be asked about: how light, red or yellow it is, each a coordinate of CIELAB.
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>

#include "standin/property.hpp"

namespace standin {

enum class ColourPart : std::size_t { raw_lightness, raw_redness, raw_yellowness, lightness, redness, yellowness, end };

inline constexpr std::size_t colour_part_count = static_cast<std::size_t>(ColourPart::end);

/// As of a property; what has no "raw" in its name is of the cooked mass.
const PropertyInfo& info(ColourPart part);

/// By key, by word or by the name on screens, in capitals or not; "colour" and "color" are how light it is when cooked.
std::optional<ColourPart> colour_part_of(std::string_view text);

}  // namespace standin
