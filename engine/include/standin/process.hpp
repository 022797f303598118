// How a batch is made, besides what goes into it.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

namespace standin {

enum class Order { salt_first, all_together, acid_first };
enum class Cook { pan, grill, oven, poach, loose };
inline constexpr std::size_t cook_ways = 5;

/// What the thermometer in the core said.
struct CoreReading {
    double minutes = 0, celsius = 0;

    friend bool operator==(const CoreReading&, const CoreReading&) = default;
};

/// An absent value is not said: the models then draw a number from the range of common practice.
struct Process {
    std::optional<double> plate_mm;    ///< last grinder plate
    std::optional<double> mixing_min;  ///< vigorous mixing after the salt is in
    std::optional<double> mixed_at_c;  ///< temperature of the mass when mixing ends
    std::optional<double> rest_h;      ///< from mixing to cooking
    std::optional<double> rest_at_c;
    std::optional<double> core_c;           ///< core temperature at the end of cooking
    std::optional<double> diameter_mm;      ///< of the link or patty
    std::vector<CoreReading> core_curve;    ///< in the order of time; empty: not measured
    std::optional<Order> order;             ///< unsaid: the models take it all together
    std::optional<Cook> cook;               ///< unsaid: the models take the pan
    std::optional<double> core_needed_c{};  ///< what the meat needs, where that is more than `core_c`; set by the engine, written nowhere
    std::optional<double> leaf_paste{};     ///< 0-1: how far raw leaf of untold cut goes in as a paste; set by the engine, written nowhere
};

}  // namespace standin
