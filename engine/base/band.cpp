#include "base/band.hpp"

#include <algorithm>
#include <cmath>

namespace standin {
namespace {

constexpr double z95 = 1.6448536269514722;  // standard normal quantile of 0.95
constexpr double log_from_ratio = 1.5;

double percentile(const std::vector<double>& sorted, double p) {
    const double place = p * static_cast<double>(sorted.size() - 1);
    const auto below = static_cast<std::size_t>(place);
    const auto above = std::min(below + 1, sorted.size() - 1);
    return sorted[below] + (place - static_cast<double>(below)) * (sorted[above] - sorted[below]);
}

}  // namespace

double at(const Band& band, double z) {
    if (z == 0) return band.mid;
    const double end = z < 0 ? band.low : band.high;
    const double share = std::abs(z) / z95;
    const bool logarithmic = band.low > 0 && band.high > band.low * log_from_ratio;
    if (logarithmic) return band.mid * std::pow(end / band.mid, share);
    const double straight = band.mid + (end - band.mid) * share;
    return band.low >= 0 ? std::max(0.0, straight) : straight;  // what cannot be negative at 5 % is not so beyond
}

Band band_of(std::vector<double> draws) {
    std::sort(draws.begin(), draws.end());
    return {percentile(draws, 0.05), percentile(draws, 0.50), percentile(draws, 0.95)};
}

}  // namespace standin
