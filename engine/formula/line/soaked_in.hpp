// "100 g bread soaked in 100 ml milk and squeezed": what the bread soaks up goes into the mass with it.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "formula/lexer/trouble.hpp"
#include "knowledge/index/knowledge.hpp"
#include "standin/reason.hpp"

namespace standin {

struct SoakedIn {
    std::string food, liquid;  ///< a line each
    Reason told{};             ///< what was presumed
};

/// Of bread, crumbs and the like, with a liquid that has an amount and can be read; else nothing.
std::optional<SoakedIn> soaked_in_measured(std::string_view line, const Origin& origin, const Knowledge& knowledge);

}  // namespace standin
