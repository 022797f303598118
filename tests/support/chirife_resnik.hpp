// A second opinion on the water activity of salt solutions: Resnik and Chirife 1988, J Food Prot 51:419, cited, coefficients from memory.
#pragma once

/// From water-phase salt in percent, for up to 10 % only.
inline double chirife_resnik(double salt_pct) { return 1 - salt_pct * (0.0052471 + salt_pct * 0.00012206); }
