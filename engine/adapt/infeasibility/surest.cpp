#include "adapt/infeasibility/surest.hpp"

#include <cmath>

namespace standin {

std::optional<AdaptAnswer> surest(double sure, const Surely& surely) {
    constexpr double even = 0.5, step = 0.05, hair = 1e-9;
    const int whole = static_cast<int>(std::ceil((sure - even) / step - hair));  // steps up to the one that has failed
    if (whole <= 0) return std::nullopt;
    std::optional<AdaptAnswer> best;
    const auto has = [&](int steps) {
        AdaptAnswer found = surely(even + step * steps);
        if (found.variants.empty()) return false;
        best = std::move(found);
        return true;
    };
    if (!has(0)) return std::nullopt;
    int done = 0, beyond = whole;
    while (beyond - done > 1) {
        const int middle = (done + beyond) / 2;
        (has(middle) ? done : beyond) = middle;
    }
    return best;
}

}  // namespace standin
