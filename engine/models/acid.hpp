// pH, titratable acid and sourness of a batch.
//
// Charge balance over everything in the batch, in mmol of charge at pH = -log10 of the activity of H+:
//   strong ions + H+ - OH- - sum_j C_j z_j(pH) + [meat_sites H(pH) - meat_protons] + plant_buffer (own pH - pH) = 0
// z_j: mean negative charge of acid j, from its pKa and Davies activities. H(pH): protons that a kilogram of reference lean holds,
// H = sum_k N_k / (1 + 10^(pH - p_k)). The left side falls all the way as pH rises, so the bracketed root on [-1, 15] always exists
// or lies at an end of the bracket.
//
// Valid for 0-25 C (constants of 25 C), pH 4.6-6.6 in meat, ionic strength up to 0.5 mol/kg. The form for meat is that of Goli et al.
// 2007, Meat Science 75:308 (minced turkey, within 0.15 pH); the site numbers come from composition and are not fitted.
// Sourness = w T + (1 - w) N: T titratable acid, N molecules that still hold a proton plus free H+ (Da Conceicao Neta et al. 2007,
// J Food Sci 72:S352, shown at pH 3.5-4.5 only).
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <span>
#include <string_view>

#include "knowledge/records/records.hpp"
#include "knowledge/records/vocabulary.hpp"
#include "models/activity.hpp"
#include "models/material.hpp"
#include "models/parameters.hpp"

namespace standin {

inline constexpr double titration_end_ph = 8.2;             // where titratable acid is read off, by definition
inline constexpr double reference_lean_protein_g_kg = 205;  // the lean that meat_sites counts in

/// How many pKa an acid has; the slots after that are not read.
inline constexpr std::array<std::size_t, count_of<Acid>> basicity{1, 1, 3, 2, 2, 2, 2, 2, 3};

/// What binds protons in meat.
enum class MeatSite : std::size_t { carboxyl, histidine, dipeptide, phosphate, lactate };
inline constexpr std::size_t meat_site_count = 5;

struct AcidParameters {
    std::array<std::array<double, 3>, count_of<Acid>> pka{};
    double pkw = 0;
    DaviesParameters davies;
    std::array<double, meat_site_count> sites{};    ///< mmol/kg reference lean
    std::array<double, meat_site_count> site_pk{};  ///< apparent, at the ionic strength of meat
    double native_ionic = 0;                        ///< mol/kg water, ions that food brings besides salt
    double equivalents_limit = 0;  ///< protons that an acid may own for each one titrated; the rest of the titration is buffer
    double sour_weight = 0;        ///< of titratable acid in sourness
    double cooking_rise = 0;       ///< pH, of pork
    std::array<double, count_of<Species>> rise{};  ///< by kind of meat, pork 1
    double model_error = 0;                        ///< pH, added to every predicted pH
};

std::span<const Binding<AcidParameters>> acid_bindings();

/// mmol H+ that a kilogram of reference lean holds at `ph`.
double bound_protons(double ph, const AcidParameters& parameters);

/// Molar mass in g/mol, and the protons a molecule gives up when titrated to pH 8.2 (the convention of "g/kg as citric").
double molar_mass(Acid acid);
double titrated_protons(Acid acid);

/// Titratable acid in mmol protons/kg from a value in "mmol/kg" or as an equivalent acid in "g/kg citric". Nothing for another unit.
std::optional<double> titratable_mmol_kg(double value, std::string_view unit);

/// An acid ingredient as acid molecules, strong ions and what else takes up protons, each for a kilogram of it.
struct AcidBase {
    std::array<double, count_of<Acid>> acids{};  ///< mmol
    double strong = 0;                           ///< mmol charge, strong cations less strong anions
    double buffer = 0;                           ///< mmol/pH, to be counted as plant buffer at the ingredient's own pH
};

/// From an ingredient's own pH and its acid titratable to pH 8.2, so that
///   titratable = sum_j C_j (z_j(8.2) - z_j(ph)) + buffer (8.2 - ph)   and charges balance at `ph`.
/// `shares` are by protons titrated; what they leave of 1, and what an acid could only give by being mostly its own salt (beyond
/// equivalents_limit), is buffer: protein and phosphate in yoghurt. `water` is kg water in a kg.
AcidBase decompose(double ph, double titratable_mmol_kg, std::span<const AcidShare> shares, const AcidParameters& parameters,
                   double water = 1);

/// An acid of any pKa (three at most) in water.
struct Dissolved {
    std::span<const double> pka;
    double mol_kg = 0;
};

struct SolutionPh {
    double ph = 0;
    double ionic_strength = 0;  ///< mol/kg
};

/// A clear solution of acids with `strong` mol/kg of singly charged strong cations less strong anions; the ionic strength is iterated.
/// `ideal` sets every activity coefficient to one.
SolutionPh solve_solution(std::span<const Dissolved> acids, double strong, const AcidParameters& parameters, bool ideal = false);

/// AcidParameters made ready for many batches.
struct AcidConstants {
    std::array<std::array<double, 3>, count_of<Acid>> overall{};  // products of the first i dissociation constants; 0 beyond the last
    std::array<double, meat_site_count> sites{}, site_constant{};
    double water = 0;  // ion product
    DaviesParameters davies;
    double native_ionic = 0, sour_weight = 0, cooking_rise = 0, model_error = 0;
    std::array<double, count_of<Species>> rise{};
};

AcidConstants prepare(const AcidParameters& parameters);

struct BatchAcid {
    double ph = 7;
    double titratable_mmol_kg = 0;
    double undissociated_mmol_kg = 0;  ///< acid molecules that hold at least one proton; free H+ not counted
    double sourness_mmol_kg = 0;
    double cooked_ph = 7;
};

/// Pure water and an empty batch have pH 7. Amounts must not be negative (strong_ions may be).
BatchAcid batch_acid(const Material& batch, const AcidConstants& constants);
BatchAcid batch_acid(const Material& batch, const AcidParameters& parameters);

/// mol/kg water, not capped: native ions, salt, and strong ions with one counter-ion each.
double batch_ionic_strength(const Material& batch, const AcidConstants& constants);

}  // namespace standin
