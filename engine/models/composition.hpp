// Mass balance: what one gram of a line brings into the batch, after its preparations.
//
//   preparation, per gram that goes in:  mass' = yield * mass;  dry part' = kept * dry part;  water' = mass' - dry parts'
//   fat is drawn first and the rest of the food shares what it leaves; the other solids are drawn next and water closes the sum
//
// Composition is that of the knowledge (USDA SR28 for the most part), per 100 g edible portion. A preparation that would leave less
// than no water leaves none and weighs what its solids weigh. Chlorophyll that is not kept becomes pheophytin.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "models/acid.hpp"
#include "models/material.hpp"
#include "standin/formula.hpp"

namespace standin {

/// One line's food, without its weight.
struct Portion {
    const Ingredient& ingredient;
    std::span<const Prepared> prepared;
    bool weighed_prepared = false;     ///< the gram is weighed after preparation
    double pods = 1;                   ///< chiles that share out their heat
    std::optional<Band> fat_pct{};     ///< fat in 100 g, where the maker said so
    std::optional<Band> ph{};          ///< likewise, as Line has them
    std::optional<Band> acid_pct{};    ///< g in 100 g, as its main acid
    std::optional<Band> heat_mg_kg{};  ///< capsaicinoids of the food as it is weighed
    std::optional<Band> likeness{};    ///< factors by which the record may be off, where it stands for a food that is only like it
};

/// The material of one gram as weighed, one a draw of `acid` (as many as `draws` has). Every preparation must be known and fit the
/// tissue. What is uncertain is named by ingredient and property, for meat by species, so that formulas share it.
std::vector<Material> unit_materials(const Portion& portion, const Knowledge& knowledge, std::span<const AcidParameters> acid,
                                     const Draws& draws);

/// Leaf, green vegetable, fresh chile and sour flesh, of which the paste of a green sausage is blended; nothing dried.
bool goes_into_paste(const Ingredient& food);

/// What is presumed of raw leaf where nobody says how it is cut.
enum class LeafCut {
    said,      ///< nothing: somebody says so, or it is no raw leaf
    by_share,  ///< a herb: chopped where there is little green in the mass, blended where there is much (`paste_by_share`)
    ground     ///< a green: through the plate with the meat
};

LeafCut leaf_cut_presumed(const Ingredient& food, std::span<const Prepared> prepared, const Knowledge& knowledge);

/// Grams after preparation of one gram as weighed before it, in the middle of the bands.
double preparation_yield(const Ingredient& ingredient, std::span<const Prepared> prepared, const Knowledge& knowledge);

}  // namespace standin
