// Water that binders hold in the heat, and what they leave loose. Bind and cooking ask alike.
//
//   held = e * (sets cold + sets hot + thickens - c * protein part * exp(-((pH - pI) / w)^2))
//
// A protein binder holds least near its isoelectric point (soy, milk and egg white all near 4.5). What sets when chilled melts in the
// heat and holds nothing there.
#pragma once

#include "models/material.hpp"

namespace standin {

struct BinderParameters {
    double efficiency;                                           // g/g: held in a salted hot mass for each gram in excess water
    double isoelectric_ph, isoelectric_width, isoelectric_loss;  // pH, pH, share
};

/// 0-1: the share of its water that a protein binder still holds at this pH.
double protein_share_kept(double ph, const BinderParameters& p);

/// Grams held while hot.
double held_in_the_heat(const Material& batch, double ph, const BinderParameters& p);

/// Water of paste that `capacity` grams of binder water leave loose (g). Smooth, and never more than either side allows.
double loose_paste_water(double paste_water, double capacity);

}  // namespace standin
