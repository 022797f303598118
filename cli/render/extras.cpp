#include "render/extras.hpp"

namespace standin::cli {

std::optional<CostChange> Extras::change(const Formula& variant) const {
    if (!engine || !prices || !base) return std::nullopt;
    auto found = engine->cost_change(*base, variant, *prices);
    return found ? std::optional(std::move(*found)) : std::nullopt;
}

}  // namespace standin::cli
