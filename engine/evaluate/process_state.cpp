#include "evaluate/process_state.hpp"

#include <algorithm>

#include "core/band.hpp"

namespace standin {
namespace {

struct Open {
    const char* id;
    std::optional<double> Process::*said;
    double ProcessState::*value;
};

constexpr Open open_values[] = {
    {"process.plate_mm", &Process::plate_mm, &ProcessState::plate_mm},
    {"process.mixing_min", &Process::mixing_min, &ProcessState::mixing_min},
    {"process.mixed_at_c", &Process::mixed_at_c, &ProcessState::mixed_at_c},
    {"process.rest_h", &Process::rest_h, &ProcessState::rest_h},
    {"process.rest_at_c", &Process::rest_at_c, &ProcessState::rest_at_c},
    {"process.core_c", &Process::core_c, &ProcessState::core_c},
    {"process.diameter_mm", &Process::diameter_mm, &ProcessState::diameter_mm},
};

}  // namespace

std::vector<ProcessState> process_states(const Process& process, const Knowledge& knowledge, const Draws& draws) {
    std::vector<ProcessState> states(draws.count());
    for (auto& state : states) {
        state.order = process.order.value_or(state.order);
        state.cook = process.cook.value_or(state.cook);
    }
    for (const auto& open : open_values) {
        const auto& said = process.*open.said;
        const Band& usual = knowledge.parameter(open.id);
        const auto& deviates = draws.of(open.id);
        for (std::size_t i = 0; i < states.size(); ++i) states[i].*open.value = said ? *said : at(usual, deviates[i]);
    }
    for (auto& state : states) {
        state.cooked_to_c = std::max(state.core_c, process.core_needed_c.value_or(0));
        state.leaf_paste = process.leaf_paste;
    }
    return states;
}

}  // namespace standin
