// What a quantity of food brings into the batch, as extensive amounts. All of them add up, so a batch is the sum over its lines of
// grams times the material of one gram, and every model works on that sum alone.
#pragma once

#include <array>
#include <cstddef>

#include "knowledge/records/vocabulary.hpp"

namespace standin {

/// Grams unless said otherwise.
enum class Amount : std::size_t {
    mass,
    water,
    protein,
    fat,
    carbohydrate,
    fibre,
    ash,
    sugars,
    alcohol,
    salt,              // NaCl put in by hand
    sodium,            // all sodium
    chlorophyll_live,  // mg, in raw leaf
    unseen_live,       // mg of that in pieces of leaf, which colour their own spots and not the mass
    pieces_shown,      // mg of the rest of chopped leaf, which an instrument reads with the mass
    untold_live,       // mg in raw leaf of which nobody said how it is cut
    greens,            // g of leaf, fresh chile and sour flesh, of which a paste is made where there is much
    chlorophyll_set,   // mg, in leaf whose membranes heat has opened
    pheophytin,        // mg, chlorophyll already lost in preparation
    capsaicinoids,     // mg
    pungency,          // mg capsaicin equivalent of pepper and ginger
    titratable,        // mmol protons that the added acids give up to pH 8.2
    strong_ions,       // mmol charge, strong cations less strong anions
    plant_buffer,      // mmol/pH of vegetables and powders
    plant_buffer_ph,   // the same times their own pH
    meat_sites,        // kg of reference lean (20.5 % protein) times its buffer scale
    meat_protons,      // mmol bound by the meat at its own pH
    meat,              // g of meat block
    meat_fat,
    meat_protein,
    undone_protein,  // g of that whose hold on water freezing has undone
    bind_protein,    // g meat protein times bind index
    bind_mass,       // g meat times bind index
    bind_ph,         // bind_protein times the pH that the meat usually has
    soft_fat,        // g fat that mixing can smear: of meat, oils and rendered fats
    fat_softens,     // the same times the temperature at which half of it smears, C
    free_fat,        // g fat that no cell encloses: oils and rendered fats
    held_cold,
    held_hot,
    held_chilled,
    held_thick,    // g water that binders hold, by when they set; what is thick never sets
    held_own,      // g of its own water that such a food brings to the gel, beside the rest that it can take up
    held_protein,  // g of that held cold and hot, by protein
    held_fat,      // g fat that binders hold
    paste_water,   // g water brought by anything but meat and not in a gel
    poured_water,  // g of that which comes as a liquid, in no cell
    protease,      // g of raw pineapple that digests meat as fast
    gel_water,     // g water in the gel of a food that is one, or sets as one: cooked grain, egg
    set_protein,   // g protein of what sets with its own water
    tint_red,
    tint_green,
    tint_blue,  // grams times the K/S that 1 % of the food adds, for pigments other than chlorophyll
    fading_red,
    fading_green,
    fading_blue,  // of that, what cooking takes; less than nothing where it darkens
    tint_of_red,  // of the green band's, what red chile and its like bring
    sulphite,     // mg SO2
    dose_nut,     // g dry solids of nuts and seeds
    dose_herb,
    dose_allium,
    dose_spice,
    dose_seasoning,  // herb or spice, once where a seed is both; g fresh-form equivalent, as the two and alliums
    end
};

inline constexpr std::size_t amount_count = static_cast<std::size_t>(Amount::end);
inline constexpr std::size_t acid_offset = amount_count;                        // mmol of each acid
inline constexpr std::size_t species_offset = acid_offset + count_of<Acid>;     // g meat of each species
inline constexpr std::size_t lean_offset = species_offset + count_of<Species>;  // g of that without its fat
inline constexpr std::size_t aroma_offset = lean_offset + count_of<Species>;    // intensity times g fresh form
inline constexpr std::size_t material_size = aroma_offset + count_of<AromaNote>;

class Material {
public:
    double& operator[](Amount a) { return amounts_[static_cast<std::size_t>(a)]; }
    double operator[](Amount a) const { return amounts_[static_cast<std::size_t>(a)]; }
    double& operator[](Acid a) { return amounts_[acid_offset + static_cast<std::size_t>(a)]; }
    double operator[](Acid a) const { return amounts_[acid_offset + static_cast<std::size_t>(a)]; }
    double& operator[](Species s) { return amounts_[species_offset + static_cast<std::size_t>(s)]; }
    double operator[](Species s) const { return amounts_[species_offset + static_cast<std::size_t>(s)]; }
    double& lean(Species s) { return amounts_[lean_offset + static_cast<std::size_t>(s)]; }
    double lean(Species s) const { return amounts_[lean_offset + static_cast<std::size_t>(s)]; }
    double& operator[](AromaNote n) { return amounts_[aroma_offset + static_cast<std::size_t>(n)]; }
    double operator[](AromaNote n) const { return amounts_[aroma_offset + static_cast<std::size_t>(n)]; }

    /// Adds `grams` of a food whose material for one gram is `unit`.
    void add(const Material& unit, double grams) {
        for (std::size_t i = 0; i < material_size; ++i) amounts_[i] += unit.amounts_[i] * grams;
    }

    /// `amount` in `per` grams of the whole, e.g. percent with per = 100, mg/kg with per = 1000.
    double share(Amount amount, double per) const { return per * (*this)[amount] / (*this)[Amount::mass]; }

private:
    std::array<double, material_size> amounts_{};
};

/// The mean over the meats of the batch by weight of a figure by kind; 1 where it has none.
inline double mean_over_meats(const Material& batch, const std::array<double, count_of<Species>>& figure) {
    double sum = 0, meat = 0;
    for (std::size_t s = 0; s < count_of<Species>; ++s) {
        const double grams = batch[static_cast<Species>(s)];
        sum += grams * figure[s];
        meat += grams;
    }
    return meat > 0 ? sum / meat : 1;
}

}  // namespace standin
