// The lines of a kitchen file that are of no food: the scale, the pan, the batch.
#pragma once

#include <optional>
#include <string_view>

#include "knowledge/index/knowledge.hpp"
#include "standin/kitchen.hpp"
#include "standin/result.hpp"

namespace standin {

/// "scale: 5 g", "pan loss of hedge link: 22 %", "batch pH: 5.4"; nothing where the line is none of them. Errors have no place yet.
std::optional<Result<KitchenFact>> bench_fact(std::string_view line, const Knowledge& knowledge);

}  // namespace standin
