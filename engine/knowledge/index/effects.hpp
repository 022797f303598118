// Which effect of a preparation fits a tissue, and its values at a given time.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "knowledge/records/records.hpp"
#include "standin/formula.hpp"

namespace standin {

/// Whether `preparation` is one of the steps.
bool has_step(const std::vector<Prepared>& steps, std::string_view preparation);

/// The effect for `tissue`, else the one for every tissue, else null: the preparation does not fit.
const PreparationEffect* effect_on(const Preparation& preparation, Tissue tissue);

/// The band at `minutes`, linear between the points and flat beyond them.
Band at_minutes(const std::vector<Point>& points, std::optional<double> minutes);

/// The share kept of `what`, the band {1, 1, 1} when the effect says nothing of it.
Band kept_share(const PreparationEffect& effect, Kept what, std::optional<double> minutes);

}  // namespace standin
