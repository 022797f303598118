// Every number that leaves the engine is a band.
#pragma once

namespace standin {

/// 5th percentile, median and 95th percentile of one quantity, in that quantity's own unit.
struct Band {
    double low = 0;
    double mid = 0;
    double high = 0;

    friend bool operator==(const Band&, const Band&) = default;
};

}  // namespace standin
