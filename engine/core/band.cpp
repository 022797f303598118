#include "core/band.hpp"

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

Spread::Spread(const Band& band) : band_(band), logarithmic_(band.low > 0 && band.high > band.low * log_from_ratio) {
    below_ = (logarithmic_ ? std::log(band.low / band.mid) : band.low - band.mid) / z95;
    above_ = (logarithmic_ ? std::log(band.high / band.mid) : band.high - band.mid) / z95;
}

double Spread::at(double z) const {
    const double change = z < 0 ? -z * below_ : z * above_;
    if (logarithmic_) return band_.mid * std::exp(change);
    const double straight = band_.mid + change;
    return band_.low >= 0 ? std::max(0.0, straight) : straight;  // what cannot be negative at 5 % is not so beyond
}

double at(const Band& band, double z) { return Spread(band).at(z); }

Band band_of(std::vector<double> draws) {
    std::sort(draws.begin(), draws.end());
    return {percentile(draws, 0.05), percentile(draws, 0.50), percentile(draws, 0.95)};
}

}  // namespace standin
