#include "models/activity.hpp"

#include <algorithm>
#include <cmath>

namespace standin {

double log10_activity(double charge, double ionic_strength, const DaviesParameters& davies) {
    const double strength = std::clamp(ionic_strength, 0.0, davies.limit);
    const double root = std::sqrt(strength);
    return -davies.a * charge * charge * (root / (1 + root) - davies.b * strength);
}

Activities activities(double ionic_strength, const DaviesParameters& davies) {
    const double one = std::pow(10.0, log10_activity(1, ionic_strength, davies));
    const double square = one * one;
    const double two = square * square;  // the exponent goes with the square of the charge
    return {1, one, two, two * two * one};
}

}  // namespace standin
