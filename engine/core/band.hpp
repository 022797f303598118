// Bands as distributions: 5 % of draws fall under `low`, half under `mid`, 5 % over `high`.
#pragma once

#include <vector>

#include "standin/band.hpp"

namespace standin {

/// A band without width.
constexpr Band exactly(double value) { return {value, value, value}; }

constexpr Band scaled(const Band& band, double factor) { return {band.low * factor, band.mid * factor, band.high * factor}; }

/// End by end, for positive bands.
constexpr Band product(const Band& a, const Band& b) { return {a.low * b.low, a.mid * b.mid, a.high * b.high}; }

constexpr double width(const Band& band) { return band.high - band.low; }

/// A band made ready for many draws.
class Spread {
public:
    explicit Spread(const Band& band);

    /// See `at`.
    double at(double z) const;

private:
    Band band_;
    bool logarithmic_ = false;
    double below_ = 0, above_ = 0;  // change of the value, or of its logarithm, for a standard deviation either way
};

/// The value at `z` standard deviations. Two half-distributions meet at the median, each drawn so that its own end is met at
/// z = -1.645 or +1.645: log-normal halves where the whole band is positive and wider than a factor 1.5, normal halves otherwise. A band
/// that does not go below zero never gives a negative value.
double at(const Band& band, double z);

/// The 5th, 50th and 95th percentile of `draws` (unsorted, not empty; linear between order statistics).
Band band_of(std::vector<double> draws);

}  // namespace standin
