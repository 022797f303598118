// How well a cooked sausage mass holds together, and how firm it is to the bite.
//
//   index    = error * meat * salt * acid * order * cold * mixing * plate * rest * enzyme * dilution * gum^q + binder
//   bind     = 100 (1 - exp(-index / scale))
//   hardness = acid^s * (order * cold * enzyme)^m * (protein/15 %)^a / (1 + fat/f0) * (3.5 protein/water)^w * salt^b *
//   exp(-g (pH - 5.7)) * plate * mixing * gum * core * (1 + c binder)
//   + d binder, over its scale; firmness = 100 hardness / (1 + hardness)
//
// meat      weighted mean of two readings of the trade's bind indices: per gram of protein and per gram of meat
// salt      logistic in the ionic strength of the water: myosin dissolves near 0.5-0.6 mol/kg. The bite follows it less steeply where
//           the meat has only its own water, for there the particles are firm by themselves; b grows with the share of foreign water
// acid      falls from pH 6.1 down towards the isoelectric point of myosin, counted from the pH that the meat usually has, for its index
//           was found at that; firmness follows it by a small power, so a sour mass crumbles before it is soft
// order     acid that meets unsalted meat keeps protein from dissolving
// cold      fat that is soft when mixed smears over the meat (by how much fat there is and how hard it is); what of the water is ice gives
//           no protein, and salt keeps more of it liquid
// rest      the salt goes on bringing protein out in the cold, ever less; what the pan takes hardly follows (cooking yield of ground
//           chicken salted seven days before or just before: Food Sci Anim Resour 40(2):231, Table 3). 1 at the usual rest
// enzyme    raw pineapple, kiwifruit, papaya, ginger and fig cut up myosin, in the cold too: by their dose and the hours of rest
// core      the hotter, the firmer: what stays is denser. 1 at 71 C; bind is told of a mass that has set and does not follow
// dilution  protein share of the batch, that of egg with it, with paste water that no binder or gel holds counted again; what was poured
//           in counts again only beyond what the dissolved protein of the meat takes up
// gum       xanthan, guar and locust bean gum hold water but soften the gel round them (Foegeding, Ramsey 1986, J Food Sci 51:33)
// water     added in place of fat at the same protein softens: protein counts against all the water, beside its share of the batch
// binder    water held by binders, worth less as paste water beyond their capacity grows, and by proteins near their isoelectric point
// fat       oils and rendered fats soften more than the same fat in its cells
// state     fat smeared over the meat, and protein that early acid or ice kept from dissolving, leave a weaker gel: softer, too
// jelly     served cold, what sets when chilled (gelatin, agar, carrageenan) adds a gel that melts in the heat
//
// The structure follows the meat science literature; most magnitudes are judgement (knowledge/models/bind.json tells which).
// Good for ranking and for differences between versions of one sausage: raw ground masses, 0-3 % salt, pH 4.8-6.5, 5-50 % fat.
#pragma once

#include <span>
#include <string_view>

#include "models/binder.hpp"
#include "models/material.hpp"
#include "models/parameters.hpp"
#include "standin/process.hpp"

namespace standin {

struct BindParameters {
    double error;                                // factor on the meat part, all that the model leaves out
    double reading;                              // weight of the per-protein reading, 0-1
    double bull_protein;                         // %, protein of the meat whose index is 1
    double salt_floor, salt_middle, salt_width;  // share, mol/kg, mol/kg
    double native_ions;                          // mol/kg in unsalted meat water
    double ph_best, ph_scale, ph_floor;
    double smear_span, smear_power, smear_fat;  // C below the half, 1, % fat
    double ice_native, ice_salt, ice_power;     // C where unsalted meat begins to freeze, C kg/mol of salt in its water, 1
    double mixing_floor, mixing_time;           // share, min
    double plate_power;
    double rest_gain, rest_time;                           // share, h
    double enzyme_rate;                                    // 1/h for a mass that is all raw pineapple
    double order_cost, order_acid, order_together;         // share, mmol/kg batch, share
    double dilution_protein, dilution_power, paste_extra;  // %, 1, g/g
    double takes_up;                                       // g of poured water a gram of dissolved meat protein
    BinderParameters binder;
    double binder_cold;                // share
    double binder_most, binder_water;  // index, g held water per g batch
    double binder_thinned;             // g binder water that a gram of loose paste water thins
    double gum_scale, gum_bind;        // g held water per g batch, power
    double jelly_most;                 // index
    double scale;                      // index

    double firm_protein, firm_fat;  // 1, %
    double firm_free_fat;           // g of fat that a gram of free fat counts besides
    double firm_water;              // power of the meat's own water over all water
    double firm_salt, firm_salt_wet, firm_ph, firm_plate;
    double firm_mixing, firm_mixing_time;  // share, min
    double firm_state;                     // power of order and cold
    double firm_set;                       // power of the acid factor
    double firm_core;                      // 1/C
    double firm_binder, firm_binder_own;
    double firm_scale;
};

std::span<const Binding<BindParameters>> bind_bindings();

inline constexpr double usual_rest_h = 18, usual_core_c = 71;  // where rest and core change nothing

/// The mass when mixing ends, and what becomes of it.
struct MixState {
    double ph = 0;
    double temperature_c = 0;
    double mixing_min = 0;
    double plate_mm = 0;
    Order order = Order::all_together;
    double rest_h = usual_rest_h, core_c = usual_core_c;
};

/// The two results and what made them; a factor of 1 costs nothing. That of acid is over 1 where the batch lies above the meat's usual pH.
struct BatchBind {
    double bind = 0;      ///< 0-100
    double firmness = 0;  ///< 0-100; a well made fresh pork sausage has 50
    double index = 0;     ///< bind before it saturates
    double hardness = 0;  ///< relative to a well made fresh pork sausage
    double meat = 0;      ///< bind index of the batch's meat; bull meat 1
    double salt_factor = 1, acid_factor = 1, order_factor = 1, cold_factor = 1, mixing_factor = 1, plate_factor = 1, rest_factor = 1,
           dilution_factor = 1, gum_factor = 1, enzyme_factor = 1;
    double binder = 0;                                      ///< added to the index
    double ionic_strength = 0;                              ///< mol/kg water
    double loose_water = 0;                                 ///< g paste water per g batch that no binder holds
    double bind_served_cold = 0, firmness_served_cold = 0;  ///< with what sets when chilled
};

BatchBind batch_bind(const Material& batch, const MixState& mix, const BindParameters& parameters);

/// "crumbly", "loose", "tender", "sliceable" or "firm-bound".
std::string_view bind_word(double bind);

}  // namespace standin
