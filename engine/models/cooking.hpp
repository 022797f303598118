// What cooking takes out of a raw mass and what stays: a water stream and a fat stream, each balanced on its own.
//
//   water kept = k(method, core, thickness in the oven) * kind * own * lot * meat protein * g(pH) * g(salt) * making + e * binder water + r
//   * loose paste water
//                + q * gel water, never over the water that the dry heat of the method leaves
//   poached:   water kept = (1 - drip) * lot * g(pH) * making * (1 - u(core) * exp(-salt/scale) - v(core)) * water + e * binder water,
//              never over k(poach) * kind * meat protein + e * binder water + r * loose paste water + q * gel water
//   fat lost   = c(share of the cells) * (fat in cells, less its part of what binders hold)
//                + o(c(share of all)) * (free fat likewise); free what no cell encloses, c times 1 + c (1 - making) up to all of it, o by
//                1 + o on the odds
//   share      = s(method) * bound + (u * kind * plain - s(method) * bound) * exp(-salt/scale)      in the pan, on the grill, in the oven
//   bound      = k F^n / (k F^n + h^n) with its own n and h, k the kind over pork, of which it was worked out
//              = s(method) * kind * plain                                                          loose; poached likewise without kind
//   plain      = F^n / (F^n + h^n), F the fat in % of the batch without the water that came in beside the meat, which encloses none;
//                of the fat in cells F leaves out the free fat too
//
// g(pH)   counted from the pH that the meat usually has, whose effect is in the factor of its kind
// kind    by the meat, the mean over what is in the batch: pork keeps less water a gram of protein than beef, turkey a little more
// meat protein counts less where freezing has cost it some of its hold on water (knowledge/preparations.json)
// own     (the meat's own water over its protein, over 3.5)^w: young and dark meat holds more water and keeps more
// gel     water inside egg as it sets, cooked grain, bread, tofu: hardly any runs
// lot     how one lot and one pan differ from the next; plain meat more than a salted mass
// making  1 for a mass mixed until tacky, cold and salted before the acid; less where mixing, smear or early acid cost it bind
// u, v    what unsalted meat lets go in hot water, and any meat as it gets hotter than 71 C
//
// Cooked water in proportion to protein, and how fat loss of a plain mass rises with fat: worked out from the tables of Jeong, Lim, Kim
// 2016 (ground pork, 11-26 % fat, microwave) and of USDA SR28 (ground beef pan-fried, broiled and baked, 10-30 % fat), which share one
// curve. A salted, bound sausage holds its fat far longer and loses it where there is more than the meat encloses (three pork sausages of
// 25-51 % fat). A link poached in its casing keeps far more of both: it cannot evaporate, and a salted, well mixed mass holds added water,
// so its loss follows its water, not its protein. Fried loose, a mass keeps less water than as patties: beef crumbles against beef patties
// of SR28, pork less again. Binder water here counts what holds in the heat; gelatin melts out. Salt, protein and all other solids are
// taken to stay, so cooked salt is an upper end. Valid for cores of 63-100 C and 5-55 % fat.
#pragma once

#include <array>
#include <span>

#include "models/binder.hpp"
#include "models/material.hpp"
#include "models/parameters.hpp"
#include "standin/process.hpp"

namespace standin {

struct CookingParameters {
    std::array<double, cook_ways> water_per_protein;    // by Cook; g/g at 71 C core, pH 5.7, 1.5 % salt; poached the most it can hold
    double thicker;                                     // share of it that a doubling of the thickness costs in the oven
    double own_water;                                   // power of the meat's own water a gram of protein over the usual
    double lot, lot_plain;                              // factor of this lot and pan; how much more an unsalted one strays
    double drip;                                        // share of its water that a salted mass loses in water at 71 C
    double drip_unsalted;                               // share that it loses besides without salt
    double drip_hotter, drip_hotter_unsalted;           // shares a C above 71
    std::array<double, count_of<Species>> kind;         // water kept a gram of protein, beef 1
    std::array<double, count_of<Species>> fat_of_kind;  // fat lost by a plain mass, beef 1
    std::array<double, cook_ways> evaporates;           // by Cook; share of the water that leaves as steam whatever holds it
    double hotter, cooler;                              // g/g lost per C above 71, gained per C below
    double ph_slope, ph_most, ph_least;                 // 1/pH, and the ends it bends into as shares of the middle
    double salt_gain, salt_scale;                       // share, % salt
    BinderParameters binder;
    double paste_kept;                       // share of loose paste water
    double poured_kept;                      // the same of what was poured in
    double gel_kept;                         // share of the water in gels of egg, cooked grain and the like
    std::array<double, cook_ways> severity;  // by Cook; share of the curve: loose and poached the plain one, else the bound one
    double care_water, care_fat;             // shares lost and gained where nothing binds
    double fat_half, fat_power;              // % fat, 1
    double bound_fat_half, bound_fat_power;  // % fat, 1: of a salted, bound mass
    double free_fat;                         // share that oils and rendered fats lose besides
    double unsalted_fat, fat_salt_scale;     // share of the plain curve that unsalted beef loses; % salt that ends it
};

std::span<const Binding<CookingParameters>> cooking_bindings();

/// Percent of the raw mass for the losses, of the cooked mass for the composition.
struct BatchCook {
    double loss_pct = 0;
    double water_lost_pct = 0, fat_lost_pct = 0;
    double cooked_water_pct = 0, cooked_fat_pct = 0, cooked_protein_pct = 0, cooked_salt_pct = 0;
    double yield = 1;  ///< g cooked per g raw
};

inline constexpr double usual_thickness_mm = 32;  // where the oven's k is stated

/// How a mass goes into the heat and how far.
struct CookState {
    double ph = 0;
    Cook method = Cook::pan;
    double core_c = 0;
    double making = 1;  ///< product of the bind factors of mixing, order, cold and enzyme; 1 costs nothing
    double thickness_mm = usual_thickness_mm;
};

BatchCook batch_cook(const Material& batch, const CookState& state, const CookingParameters& parameters);

/// The same cook had it lost so much in all: water and fat in the same proportion, each no more than there is.
BatchCook with_loss(const Material& batch, const BatchCook& cook, double loss_pct);

}  // namespace standin
