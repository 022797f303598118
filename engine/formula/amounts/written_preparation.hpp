// How a preparation is written in a line.
#pragma once

#include <string>

#include "knowledge/index/knowledge.hpp"
#include "standin/formula.hpp"

namespace standin {

/// "blanched 3 min"
std::string written(const Prepared& prepared, const Knowledge& knowledge);

}  // namespace standin
