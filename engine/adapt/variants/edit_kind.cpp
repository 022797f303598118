#include <array>
#include <string_view>

#include "standin/advice.hpp"

namespace standin {

std::string_view word(EditKind kind) {
    constexpr std::array<std::string_view, 7> all{"replace", "split", "reduce", "raise", "omit", "add", "process"};
    return all[static_cast<std::size_t>(kind)];
}

}  // namespace standin
