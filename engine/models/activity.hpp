// Activity coefficients of ions by Davies: log10 g = -a z^2 (sqrt(I) / (1 + sqrt(I)) - b I).
// Valid to an ionic strength of about 0.5 mol/kg; beyond `limit` the value there is kept. a = 0.509 belongs to water at 25 C.
// Davies 1962, Ion Association (b = 0.3).
#pragma once

#include <array>

namespace standin {

inline constexpr double sodium_chloride_g_mol = 58.443;

struct DaviesParameters {
    double a = 0;
    double b = 0;
    double limit = 0;  ///< mol/kg
};

/// log10 of the activity coefficient of an ion of `charge` at `ionic_strength` mol/kg water.
double log10_activity(double charge, double ionic_strength, const DaviesParameters& davies);

/// Activity coefficients of ions of charge 0, 1, 2 and 3.
using Activities = std::array<double, 4>;

inline constexpr Activities ideal_activities{1, 1, 1, 1};

Activities activities(double ionic_strength, const DaviesParameters& davies);

}  // namespace standin
