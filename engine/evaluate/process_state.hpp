// The process with nothing left open: what the maker does not say is drawn from common practice.
#pragma once

#include <optional>
#include <vector>

#include "core/draws.hpp"
#include "knowledge/index/knowledge.hpp"
#include "standin/process.hpp"

namespace standin {

struct ProcessState {
    double plate_mm = 0, mixing_min = 0, mixed_at_c = 0, rest_h = 0, rest_at_c = 0, core_c = 0, diameter_mm = 0;
    double cooked_to_c = 0;             ///< the core, or what the meat needs where that is more: what the pan makes of it goes by this
    Order order = Order::all_together;  // what most formulas mean that say nothing
    Cook cook = Cook::pan;
    std::optional<double> leaf_paste{};  ///< absent: by what is in the mass
};

/// One state a draw.
std::vector<ProcessState> process_states(const Process& process, const Knowledge& knowledge, const Draws& draws);

}  // namespace standin
