#include "adapt/verdict.hpp"

#include <array>
#include <utility>

namespace standin {

std::string verdict_of(double distance, const Context& context) {
    constexpr std::array<std::pair<const char*, const char*>, 3> up_to{{{"advice.verdict.same", "hardly to be told apart"},
                                                                        {"advice.verdict.close", "close"},
                                                                        {"advice.verdict.another", "another sausage, still good"}}};
    for (const auto& [limit, words] : up_to)
        if (distance <= context.constant(limit)) return words;
    return no_longer_this;
}

}  // namespace standin
