#include "narrate/directions.hpp"

#include <algorithm>
#include <array>
#include <optional>
#include <string>

#include "standin/narrate.hpp"

namespace standin {
namespace {

struct Says {
    std::string_view what, more, less;
    std::optional<Property> of{};
};

constexpr std::array<Says, 17> felt{{
    {"salt", "saltier", "less salty", Property::salt_pct_of_meat},
    {"sourness", "sharper", "less sharp", Property::sourness_mmol_kg},
    {"fat", "richer", "leaner", Property::fat_pct},
    {"bind", "better bound", "looser", Property::bind},
    {"firmness", "firmer", "softer", Property::firmness},
    {"juice", "juicier from the pan", "drier from the pan", Property::juice},
    {"juice, less lost", "juicier from the pan", "less moist to eat"},
    {"juice, more lost", "juicier to eat", "drier from the pan"},
    {"cook loss", "with more lost in the pan", "with less lost in the pan", Property::cook_loss_pct},
    {"heat", "hotter", "milder", Property::heat_mg_kg},
    {"green", "greener", "less green", Property::greenness},
    {"colour, rested", "different in colour", "different in colour"},
    {"colour, cooked", "different in colour when cooked", "different in colour when cooked"},
    {"aroma", "different in aroma", "different in aroma"},
    {"nuts", "nuttier", "less nutty"},
    {"alliums", "stronger of garlic and onion", "weaker of garlic and onion"},
    {"seasonings", "stronger of herbs and spice", "weaker of herbs and spice"},
}};

// What is measured and not felt by itself.
constexpr std::array<Says, 3> measured{{
    {"water", "wetter", "drier", Property::water_pct},
    {"protein", "more protein", "less protein", Property::protein_pct},
    {"pH", "less acid", "more acid", Property::ph},
}};

std::string_view of(const Says& says, double difference) { return difference < 0 ? says.less : says.more; }

}  // namespace

std::string_view direction(std::string_view what, double difference) {
    const auto* found = std::find_if(felt.begin(), felt.end(), [&](const Says& s) { return s.what == what; });
    return found == felt.end() ? std::string_view() : of(*found, difference);
}

std::string direction(Property property, double difference) {
    for (const auto& says : felt)
        if (says.of == property) return std::string(of(says, difference));
    for (const auto& says : measured)
        if (says.of == property) return std::string(of(says, difference));
    return (difference < 0 ? "less " : "more ") + std::string(info(property).name);
}

}  // namespace standin
