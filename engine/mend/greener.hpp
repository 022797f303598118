// What keeps a mass from being greener, by the colour model: how much greener it would be without.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "mend/measured.hpp"

namespace standin {

/// What one thing costs the green.
struct GreenCost {
    double by = 0;                   ///< less red in a*, rested or cooked, whichever is the more
    std::vector<std::size_t> lines;  ///< that it is about, those that cost most first; none: the rest
    double value = 0;                ///< minutes of the longest blanch, hours of the rest
};

/// Of `what` (green_costs); nothing where the mass has nothing of it.
std::optional<GreenCost> green_cost(std::string_view what, const Formula& mass, const MassAsMade& made, const Context& context);

/// Leaf that the line says was blanched for long, for as long as sets its green.
bool blanch_briefly(Line& line, const Knowledge& knowledge);

}  // namespace standin
