// What cooking takes out of a raw mass and what stays: a water stream and a fat stream, each balanced on its own.
//
//   water kept = k(core) * meat protein * g(pH) * g(salt) + e * binder water + r * loose paste water, never over the water there is
//   fat lost   = phi(method, fat) * (fat - e * fat held by binders)
//
// Cooked water in proportion to protein: worked out from the tables of Jeong, Lim, Kim 2016 (ground pork, 11-26 % fat, microwave),
// where k is 2.37 +- 0.02, and from USDA pork sausage (pan, 2.70). Fat loss depends far more on the method than on the fat.
// Binder water here counts what holds in the heat; gelatin melts out. Salt, protein and all other solids are taken to stay, so cooked
// salt is an upper end. Valid for cores of 63-100 C and 5-50 % fat. Bind has no sourced effect here and is left out.
#pragma once

#include <span>

#include "models/material.hpp"
#include "models/parameters.hpp"
#include "standin/process.hpp"

namespace standin {

struct CookingParameters {
    double water_per_protein;                   // g/g at 71 C core, pH 5.7, 1.5 % salt
    double hotter, cooler;                      // g/g lost per C above 71, gained per C below
    double ph_slope, ph_most, ph_least;         // 1/pH, and the ends it bends into as shares of the middle
    double salt_gain, salt_scale;               // share, % salt
    double binder_efficiency;                   // g/g
    double paste_kept;                          // share of loose paste water
    double fat_pan, fat_grill, fat_poach;       // share of fat lost
    double fat_half, fat_power, oven_severity;  // % fat, 1, share of the microwave curve
};

std::span<const Binding<CookingParameters>> cooking_bindings();

/// Percent of the raw mass for the losses, of the cooked mass for the composition.
struct BatchCook {
    double loss_pct = 0;
    double water_lost_pct = 0, fat_lost_pct = 0;
    double cooked_water_pct = 0, cooked_fat_pct = 0, cooked_protein_pct = 0, cooked_salt_pct = 0;
    double yield = 1;  ///< g cooked per g raw
};

BatchCook batch_cook(const Material& batch, double ph, Cook method, double core_c, const CookingParameters& parameters);

}  // namespace standin
