// One figure of a state, whatever it is: a property, a coordinate of a colour, the fat that runs out.
#pragma once

#include <functional>
#include <vector>

#include "evaluate/models.hpp"
#include "standin/colour_part.hpp"

namespace standin {

using StateFigure = std::function<double(const State&)>;

StateFigure figure_of(Property property);
StateFigure figure_of(ColourPart part);

/// Fat that runs out as it cooks, % of the raw mass.
double fat_run_pct(const State& state);

std::vector<double> values_of(const std::vector<State>& states, const StateFigure& figure);

}  // namespace standin
