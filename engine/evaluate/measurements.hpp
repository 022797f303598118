// What a maker could measure of a batch, how much narrower one property's band would be for it, and the line of a kitchen file that
// tells it: each reading is tried at the general middle with the spread that such readings have.
#pragma once

#include <optional>
#include <vector>

#include "evaluate/evaluator.hpp"
#include "evaluate/state_figure.hpp"
#include "standin/why.hpp"

namespace standin {

struct Readings {
    std::vector<Measurement> single;  ///< the best first; those that take less than a twentieth off the band are left out
    std::optional<MeasuredTogether> together;
};

Readings readings_for(const Formula& formula, const StateFigure& figure, const Sampled& sampled, const Band& band);

}  // namespace standin
