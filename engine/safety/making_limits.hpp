// How far the making may go: what the bench sheet keeps to, and what a formula that goes beyond is told.
#pragma once

#include <vector>

#include "safety/conditions.hpp"

namespace standin {

struct MakingLimit {
    const MakingRule* rule = nullptr;
    std::vector<std::string> foods;  ///< ids of those that call for it
};

/// The strictest limit on a field that holds for the batch; no rule: none does.
MakingLimit limit_on(ProcessField field, const Facts& facts, std::string_view rules);

/// What the process says beyond a limit. A field is spoken of once, by its strictest limit.
std::vector<CautionText> making_cautions(const Facts& facts, std::string_view rules);

/// The same of a process alone: the limits that hold for any batch.
std::vector<CautionText> making_cautions(const Process& process, const Knowledge& knowledge, std::string_view rules);

}  // namespace standin
