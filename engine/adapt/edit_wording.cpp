#include <array>
#include <cmath>

#include "adapt/explain.hpp"
#include "standin/number_text.hpp"

namespace standin {

std::string figures(double value) {
    const double size = std::abs(value);
    return fixed_text(value, size >= 100 ? 0 : size >= 10 ? 1 : 2);
}

std::string_view word(EditKind kind) {
    constexpr std::array<std::string_view, 7> all{"replace", "split", "reduce", "raise", "omit", "add", "process"};
    return all[static_cast<std::size_t>(kind)];
}

}  // namespace standin
