#include "adapt/distance/nearness.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace standin {

Nearness nearness_of(double distance, const Context& context) {
    constexpr std::array<std::pair<const char*, Nearness>, 4> up_to{{{"advice.verdict.same", Nearness::same},
                                                                     {"advice.verdict.close", Nearness::close},
                                                                     {"advice.verdict.differs", Nearness::differs},
                                                                     {"advice.verdict.another", Nearness::another}}};
    // As it is shown: of two that read 3.3 one is not another sausage.
    const double shown = std::round(10 * distance) / 10;
    for (const auto& [limit, nearness] : up_to)
        if (shown <= context.constant(limit)) return nearness;
    return Nearness::no_longer;
}

double as_named(double distance, const Distance& measure, const State& state) {
    return std::sqrt(std::max(0.0, distance * distance - measure.wants_squared(state)));
}

}  // namespace standin
