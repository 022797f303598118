// What a maker knows of the own lots, scale and pan: facts that go before the general figures, each with a narrower band of its own.
#pragma once

#include <string>
#include <vector>

#include "standin/band.hpp"
#include "standin/reason.hpp"

namespace standin {

enum class KitchenKind {
    fat,               ///< g in 100 g of a cut
    ph,                ///< of a food
    acid,              ///< g in 100 g of an acid food, as its main acid
    heat,              ///< mg capsaicinoids in a kilo of a chile as it is
    measure,           ///< grams of one bunch, piece, cup, ...
    edible,            ///< % of a food as bought that is left when it is trimmed
    scale,             ///< g, the step that the scale shows
    pan_loss,          ///< % that the sausage loses when fried
    batch_ph,          ///< of the batch as made
    like,              ///< a food that is no record, said to be like one that is; without a figure
    pan_fat,           ///< % of its raw weight that the sausage leaves as fat in the pan
    raw_lightness,     ///< L* of the mixed batch
    cooked_lightness,  ///< L* of the middle of a cooked one, cut open
};

struct KitchenFact {
    KitchenKind kind = KitchenKind::fat;
    std::vector<std::string> foods{};  ///< ids; several where a word names a beast; none of scale, pan and batch
    Band value;                        ///< in the unit of its kind
    std::string measure{};             ///< of KitchenKind::measure: "bunch"
    std::string called{};              ///< of KitchenKind::like: what the maker calls it; `foods` has the one it is like
    std::string formula{};             ///< title of the formula that a pan loss or batch pH was measured on; empty: the one asked about
    std::string written, where;        ///< the line, and its place
};

struct Kitchen {
    std::string file;  ///< its name, as pages tell it
    std::vector<KitchenFact> facts{};
    std::vector<Reason> notes{};  ///< what the reader took upon itself
};

}  // namespace standin
