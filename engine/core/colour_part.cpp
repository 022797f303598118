#include "standin/colour_part.hpp"

#include <array>
#include <string>

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
    for (const auto called : {&PropertyInfo::key, &PropertyInfo::word, &PropertyInfo::name})
        for (std::size_t p = 0; p < parts_of_colour.size(); ++p)
            if (!wanted.empty() && fold(parts_of_colour[p].*called) == wanted) return static_cast<ColourPart>(p);
    return std::nullopt;
}

}  // namespace standin
