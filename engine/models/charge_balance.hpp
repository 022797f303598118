// The charge balance of acids in water and the pH where it closes: the working parts that acid.cpp and acid_source.cpp share.
#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <numbers>
#include <span>

#include "models/activity.hpp"

namespace standin::charge {

inline constexpr double lowest_ph = -1, highest_ph = 15, sausage_ph = 5.6;

inline double power_of_ten(double x) { return std::exp(x * std::numbers::ln10); }

// Both sides of the charge balance in mmol (or mol/kg), and their slopes in pH times ln 10.
struct Balance {
    double plus = 0, minus = 0, plus_slope = 0, minus_slope = 0;
};

// One acid's overall constants, each divided by the activity coefficient of its ion.
using Conditional = std::array<double, 3>;

inline Conditional conditional(const std::array<double, 3>& overall, const Activities& activity) {
    return {overall[0] / activity[1], overall[1] / activity[2], overall[2] / activity[3]};
}

inline std::array<double, 3> overall_constants(std::span<const double> pka) {
    std::array<double, 3> overall{};
    double sum = 0;
    for (std::size_t i = 0; i < std::min<std::size_t>(pka.size(), 3); ++i) overall[i] = power_of_ten(-(sum += pka[i]));
    return overall;
}

struct Ions {
    double charge = 0, square = 0;  // mean of the negative charge and of its square
    std::array<double, 4> share{};  // of molecules with charge 0..3
};

// `u` is one over the activity of H+.
inline Ions dissociate(const Conditional& k, double u) {
    const double one = k[0] * u, two = k[1] * u * u, three = k[2] * u * u * u;
    const double all = 1 / (1 + one + two + three);
    return {(one + 2 * two + 3 * three) * all, (one + 4 * two + 9 * three) * all, {all, one * all, two * all, three * all}};
}

inline void add_acid(Balance& balance, double amount, const Ions& ions) {
    balance.minus += amount * ions.charge;
    balance.minus_slope += amount * (ions.square - ions.charge * ions.charge);
}

// Free H+ and OH- of `water` (amount of solvent, in the unit of the balance).
inline void add_water(Balance& balance, double water, double kw, double activity, double h) {
    const double hydrogen = water * h / activity, hydroxide = water * kw / (h * activity);
    balance.plus += hydrogen;
    balance.plus_slope -= hydrogen;
    balance.minus += hydroxide;
    balance.minus_slope += hydroxide;
}

inline void add_strong(Balance& balance, double charge) { (charge > 0 ? balance.plus : balance.minus) += std::abs(charge); }

// The pH where both sides meet. Newton on the logarithm of their ratio, which is close to straight for strong acids, weak acids and
// buffers alike; a step out of the bracket goes to its end once, and one that does not halve the last is replaced by bisection.
template <class Sides>
double meeting_ph(const Sides& sides) {
    double low = lowest_ph, high = highest_ph, ph = sausage_ph, last = highest_ph - lowest_ph;
    bool low_tried = false, high_tried = false;
    for (int i = 0; i < 100; ++i) {
        const Balance b = sides(ph);
        const double gap = std::log(b.plus / b.minus);
        (gap > 0 ? low : high) = ph;
        (gap > 0 ? low_tried : high_tried) = true;
        const double slope = std::numbers::ln10 * (b.plus_slope / b.plus - b.minus_slope / b.minus);
        const double step = -gap / slope;
        if (std::abs(step) < 1e-9) return ph + step;
        double next = ph + step;
        if (!(next > low)) next = low_tried ? 0.5 * (low + high) : low;
        else if (!(next < high)) next = high_tried ? 0.5 * (low + high) : high;
        else if (std::abs(step) > 0.5 * last && low_tried && high_tried) next = 0.5 * (low + high);
        last = std::abs(next - ph);
        ph = next;
        if (last < 1e-12) break;
    }
    return ph;
}

}  // namespace standin::charge
