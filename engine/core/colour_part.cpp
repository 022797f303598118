#include "standin/colour_part.hpp"

#include <array>
#include <string>

#include "core/called.hpp"
#include "core/names.hpp"

namespace standin {
namespace {

constexpr std::array<PropertyInfo, colour_part_count> parts_of_colour{{
    {"raw_L", "lightness, raw", "L*", "raw lightness", 1},
    {"raw_a", "redness, raw", "a*", "raw redness", 1},
    {"raw_b", "yellowness, raw", "b*", "raw yellowness", 1},
    {"cooked_L", "lightness, cooked", "L*", "lightness", 1},
    {"cooked_a", "redness, cooked", "a*", "redness", 1},
    {"cooked_b", "yellowness, cooked", "b*", "yellowness", 1},
}};

}  // namespace

const PropertyInfo& info(ColourPart part) { return parts_of_colour[static_cast<std::size_t>(part)]; }

std::optional<ColourPart> colour_part_of(std::string_view text) {
    const std::string wanted = fold(text);
    if (wanted == "colour" || wanted == "color") return ColourPart::lightness;
    const auto at = called(parts_of_colour, text);
    return at ? std::optional(static_cast<ColourPart>(*at)) : std::nullopt;
}

}  // namespace standin
