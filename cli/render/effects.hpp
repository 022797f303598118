// Differences between two batches in a maker's words.
#pragma once

#include <string>
#include <vector>

#include "standin/band.hpp"
#include "standin/property.hpp"

namespace standin::cli {

/// Which properties differ enough to be worth a line, the largest first.
std::vector<Property> moved(const PerProperty<Band>& differences);

/// "less acid: pH +0.12 (+0.05 to +0.20)".
std::string effect(Property property, const Band& difference);

}  // namespace standin::cli
