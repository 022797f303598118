// Shares of the batch that bound what a move may bring: a plain kitchen's sense of proportion, judgement throughout.
#pragma once

#include <algorithm>

#include "substitute/dose.hpp"

namespace standin {

inline constexpr double most_of_paste = 0.25;    // a green, vegetable or nut
inline constexpr double most_of_leaves = 0.4;    // all leaves together, as weighed; judgement
inline constexpr double most_of_binder = 0.035;  // also the usual legal cap
inline constexpr double most_of_acid = 0.04;
inline constexpr double most_oil = 0.07;        // in all, where more of it is wanted: what is not bound weeps
inline constexpr double most_of_liquid = 0.03;  // of wine, stock, milk on top of what there is
inline constexpr double raise_share = 0.6;      // of a line
inline constexpr double dose_slack = 1.3;       // over the equal dose

inline double most_of_batch(Role role) {
    switch (role) {
        case Role::binder:
            return most_of_binder;
        case Role::acid:
            return most_of_acid;
        case Role::liquid:
            return most_of_liquid;
        default:
            return most_of_paste;
    }
}

/// Of the batch, of a food that comes in by itself.
inline double most_added(Role role) {
    constexpr double seasoning = most_of_paste / 3, fat = 0.3, lean = 0.6, binder = 0.025;  // more makes a mass gummy
    constexpr double ice = 0.05;  // what a mass of meat takes up without help; common practice
    switch (role) {
        case Role::liquid:
            return ice;
        case Role::binder:
            return binder;
        case Role::acid:
            return most_of_acid;
        case Role::fat:
            return fat;
        case Role::lean:
            return lean;
        default:
            return seasoning;
    }
}

/// Of the batch, of a fat that pours or spreads and comes in beside the meat: as fat no more than of oil, and wet no more than a mass takes
/// up.
inline double most_poured_fat(const Material& per_gram) {
    constexpr double wet = 0.1;
    const double share = per_gram[Amount::fat] / per_gram[Amount::mass];
    return share > 0 ? std::min(wet, most_oil / share) : 0;
}

/// Whether what one food brings in a role is the same thing in another: more cumin is no mustard.
inline bool interchangeable(Role role) { return !amount_of_dose(role) && role != Role::sweet; }

}  // namespace standin
