// Colour of the mass raw, rested and cooked: chlorophyll and what becomes of it, laid over the meat.
//
//   Chlorophyll turns into pheophytin, first order:  k(T, pH) = phi k0 exp(-(Ea/R) (1/T - 1/373.15 K)) 10^(-m (pH - pH_ref))  per minute.
//   phi = 1 from 55 C up; in the cold it is smaller in raw leaf, whose membranes still keep the acid out.
//   Kubelka-Munk, one constant, three bands of linear sRGB:  K/S = (1-R)^2 / (2R),   R = 1 + x - sqrt(x^2 + 2x), and in each band
//   x = base + g (chl C_chl + phe C_phe) / 100 + 100 tint / mass,   C in mg per kg of the mass; raw, g is how clear the flesh is.
//   Leaf in pieces keeps its pigment in them: C counts what colours the mass between. Where nobody said how raw leaf is cut, a little of
//   it is chopped and much of it, with the chiles and the sour flesh, a paste (untold_paste).
//   Acid sets the raw mass while it rests, half of it at pH 4.8: base = (1 - set) raw + set (cooked, its red band times a factor).
//   Tint: each line adds (K/S for every 1 % of the mass) times its grams; a hundred times that sum over the mass in grams is K/S.
//   Base, raw:     ((1-f) lean + f s fat) / ((1-f) + f s),  f the fat share of the meat block, s how much more fat scatters than lean.
//   Base, cooked:  interior at 17.5 % fat, times 1 + slope (f - 17.5 %), held outside the 10-25 % that were measured; poached, paler.
//
// Limits: kinetics measured at 60-120 C and pH 5.5-7.5, so a cold rest is an extrapolation; no light, no oxygen, no browning, no salt
// protection. Colour within about 3 dE00 for a known amount of pigment, up to some 15-20 % finely cut greens; coarse flecks differ.
// Sources: Van Loey 1998, Haisman and Clarke 1975, Weemaes 1999, Ryan-Stoneham and Tong 2000 (kinetics); pigment vectors fitted to one
// trial of pork sausage with spinach powder; pork base from a table of pork patties; other meats from memory.
#pragma once

#include <array>
#include <optional>
#include <span>
#include <string_view>

#include "knowledge/records/vocabulary.hpp"
#include "models/cielab.hpp"
#include "models/material.hpp"
#include "models/parameters.hpp"
#include "standin/process.hpp"

namespace standin {

struct ColourParameters {
    double k0 = 0;  // 1/min at 100 C and ph_ref
    double ph_ref = 0;
    double activation = 0;     // kJ/mol
    double ph_slope = 0;       // of -log10 k
    double phi_live_cold = 0;  // raw leaf, up to ramp_low_c
    double phi_set_cold = 0;   // leaf that heat has opened
    double ramp_low_c = 0, ramp_high_c = 0;
    double yield_blended = 0;                            // share of raw leaf's chlorophyll left after cutting it fine
    double chopped = 0;                                  // share of the pigment of chopped leaf that colours the whole
    double paste_from = 0, paste_until = 0;              // shares of greens in the mass, between which leaf of untold cut is a paste
    double flecks_from = 0;                              // mg/kg of chlorophyll in pieces of leaf from which they are seen
    std::array<double, count_of<Species>> clear;         // g raw: clear flesh scatters little, and pigment shows the more
    double acid_ph = 0, acid_reach = 0, acid_hours = 0;  // pH at which half sets, how far to either side, and how soon
    double acid_red = 0;                                 // on the red band of what acid set: greyer than what heat set
    Bands chl, phe;                                      // K/S for 100 mg/kg
    double pigment_strength = 0;                         // on both
    double cooked_factor = 0;                            // g in a cooked mass
    double saturation_from = 0;                          // mg/kg of pigment above which more of it colours less
    double saturation_exponent = 0;
    double greenest = 0;                                    // -a* of leaf by itself, which no doubt of the figures goes beyond
    std::array<Bands, count_of<Species>> raw_lean, cooked;  // K/S; raw at no fat, cooked at 17.5 %
    Bands raw_fat, cooked_fat_slope;                        // K/S; relative change per unit of fat share
    double fat_scatter = 0;
    double raw_scale = 0, cooked_scale = 0;      // one meat is darker than the next
    double redness = 0;                          // on the red band of raw meat: < 1 blooming red, > 1 greyed
    double raw_blue = 0;                         // on the blue band of raw meat: one laboratory's meat is yellower than the next's
    double cooked_red = 0, cooked_blue = 0;      // likewise, cooked
    double cooked_poached = 0;                   // of a poached link: K/S over that of dry heat
    double poached_blue = 0;                     // the blue band over the others, poached
    Bands plain;                                 // K/S of a mass without meat
    double plain_until = 0;                      // meat share of the mass from which the colour is all meat's
    std::array<double, cook_ways> cook_minutes;  // equivalent minutes at the core temperature reached
};

std::span<const Binding<ColourParameters>> colour_bindings();

struct BatchColour {
    Lab raw, rested, cooked;
    double chlorophyll_mg_kg = 0;  ///< unchanged chlorophyll in the raw mass, just mixed
    double kept_rested = 1;        ///< share of that left after the rest; without any: what a trace of raw leaf would keep
    double kept_cooked = 1;        ///< ... and after cooking
    double hue_rested = 0;         ///< degrees
    double flecks_mg_kg = 0;       ///< chlorophyll in pieces of leaf, which colour their own spots
    double flecks_kept_rested = 1, flecks_kept_cooked = 1;
    Lab looks_rested;           ///< `rested` with what acid has set by then: a fault to be told, which no variant is held to
    double set_rested = 0;      ///< 0-1: how far acid has set the raw mass
    Lab bare_raw, bare_cooked;  ///< its meat with nothing that colours it
    bool red_spice = false;     ///< red chile or its like makes a good part of the colour
    bool yellow_spice = false;  ///< turmeric or saffron does, red chile beside it or not
    bool brown_sauce = false;   ///< soy sauce or its like browns it
};

/// Rate of chlorophyll to pheophytin, per minute; `phi_cold` is phi below the ramp.
double chlorophyll_rate(double celsius, double ph, double phi_cold, const ColourParameters& p);

/// Share of a first-order substance left after `minutes` at `rate` per minute.
double kept_after(double rate, double minutes);

/// Kubelka-Munk of an opaque layer, in one band and in all three.
double k_over_s(double reflectance);
double reflectance(double k_over_s);
Bands k_over_s(const Lab& lab);
Lab lab_of_k_over_s(const Bands& x);

/// K/S of the mass without pigment.
Bands raw_base(const Material& batch, const ColourParameters& p);
Bands cooked_base(const Material& batch, Cook method, const ColourParameters& p);

/// `base` with `chlorophyll` and `pheophytin` (mg/kg of the mass) in it, each colouring `factor` times as strongly as raw.
Bands with_pigment(const Bands& base, double chlorophyll, double pheophytin, double factor, const ColourParameters& p);

/// 0-1: how far leaf of untold cut is a paste, by the share of greens in the mass.
double paste_by_share(double greens, double from, double until);

/// `leaf_paste`: how far leaf of untold cut is a paste; absent: by the share of greens in the mass.
BatchColour batch_colour(const Material& batch, double ph, double rest_h, double rest_at_c, Cook method, double core_c,
                         const ColourParameters& p, std::optional<double> leaf_paste = {});

/// `batch` without what chopped leaf adds to the colour of the whole: the mass between its pieces.
Material between_flecks(Material batch, const ColourParameters& p, std::optional<double> leaf_paste);

enum class Doneness { raw, cooked };

/// "green" or "olive" where pieces of leaf are seen in the mass, else empty.
std::string_view fleck_word(double flecks_mg_kg, double kept, const ColourParameters& p);

/// The word of a mass of the colour `lab` whose meat by itself is `bare`: what colours it so that it is another colour has the word that
/// people say of it, and not that of meat.
std::string_view colour_word_beside(const Lab& lab, const Lab& bare, Doneness done);

/// The words of one with red chile in it: "brick red" raw and "red-brown" cooked where that is much of it, else what people say.
std::string_view colour_word_spiced(const Lab& lab, Doneness done);

/// The same where yellow spice does.
std::string_view colour_word_yellowed(const Lab& lab, Doneness done);

/// What acid has set: opaque and pale, neither raw nor cooked.
std::string_view colour_word_set(const Lab& lab);

/// pale pink, pink, red, orange-pink, brown, grey-brown, tan, white, cream, khaki, greyish, olive, pale green or green. Up to a* 8 by
/// survey (colour_words.hpp), and redder where a cooked mass is not pink; for raw meat and what has set pale the limits are judgement.
std::string_view colour_word(const Lab& lab, Doneness done = Doneness::cooked);

/// Whether the survey names it, rather than what makers call red and pink meat.
bool colour_is_surveyed(const Lab& lab, Doneness done);

}  // namespace standin
