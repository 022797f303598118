// Salt in its three trade percentages, and water activity.
//
// Ross: aw = product of the water activities that each solute alone would give in all the water (Ross 1975, Food Technology 29:26).
//   meat's own solutes: native_aw in meat's own water, diluted by the water that other lines bring: native_aw^(meat water / water)
//   NaCl: aw = exp(-2 M m phi), phi by Pitzer, m mol/kg water, no more than dissolves
//   sugars: aw = X_w exp(-K X_s^2) (Norrish 1966, J Food Technol 1:25), part as sucrose, part as glucose and fructose
//   alcohol, added acids and their strong ions: Raoult, aw = X_w
// Valid at 25 C to saturated salt; aw falls with temperature by far less than the bands. Vegetables' own minerals are left out
// (under 0.002 at a fifth of the batch).
#pragma once

#include <span>

#include "models/material.hpp"
#include "models/parameters.hpp"

namespace standin {

struct PitzerParameters {
    double slope = 0;  ///< Debye-Hueckel slope for the osmotic coefficient, 25 C
    double b0 = 0, b1 = 0, c = 0;
};

struct SaltParameters {
    PitzerParameters pitzer;
    double saturation = 0;  ///< mol NaCl/kg water
    double native_aw = 0;
    double lowering = 0;       ///< on 1 - aw, all that salt, sugar and acid do not tell
    double sucrose_share = 0;  ///< of the sugars, by weight; the rest is glucose and fructose
    double norrish_sucrose = 0, norrish_hexose = 0;
};

std::span<const Binding<SaltParameters>> salt_bindings();

/// Osmotic coefficient of NaCl at `molality` mol/kg.
double osmotic_coefficient(double molality, const PitzerParameters& pitzer);

/// Water activity of NaCl alone at `molality` mol/kg water; stays at its value at saturation beyond it.
double salt_water_activity(double molality, const SaltParameters& parameters);

/// Water activity of one sugar: `molality` mol/kg water, Norrish constant `k`.
double norrish(double molality, double k);

struct BatchSalt {
    double salt_pct = 0;              ///< salt put in, % of batch
    double salt_pct_of_meat = 0;      ///< salt put in, % of meat block; 0 without meat
    double water_phase_salt_pct = 0;  ///< 100 salt / (salt + water)
    double water_activity = 1;
};

BatchSalt batch_salt(const Material& batch, const SaltParameters& parameters);

}  // namespace standin
