#include "adapt/nearness.hpp"

#include <array>
#include <utility>

namespace standin {

Nearness nearness_of(double distance, const Context& context) {
    constexpr std::array<std::pair<const char*, Nearness>, 4> up_to{{{"advice.verdict.same", Nearness::same},
                                                                     {"advice.verdict.close", Nearness::close},
                                                                     {"advice.verdict.differs", Nearness::differs},
                                                                     {"advice.verdict.another", Nearness::another}}};
    for (const auto& [limit, nearness] : up_to)
        if (distance <= context.constant(limit)) return nearness;
    return Nearness::no_longer;
}

}  // namespace standin
