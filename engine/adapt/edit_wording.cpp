#include <array>
#include <cmath>
#include <cstdio>

#include "adapt/explain.hpp"

namespace standin {

std::string figures(double value) {
    const double size = std::abs(value);
    const int decimals = size >= 100 ? 0 : size >= 10 ? 1 : 2;
    char text[40];
    std::snprintf(text, sizeof text, "%.*f", decimals, value);
    return text;
}

std::string_view word(EditKind kind) {
    constexpr std::array<std::string_view, 7> all{"replace", "split", "reduce", "raise", "omit", "add", "process"};
    return all[static_cast<std::size_t>(kind)];
}

}  // namespace standin
