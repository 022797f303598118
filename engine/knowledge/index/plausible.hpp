// What a fact about one lot of a food can be at all. Beyond it lies a slip of the pen, or another food.
#pragma once

#include <optional>

#include "knowledge/records/records.hpp"

namespace standin {

struct PlausibleRange {
    double low = 0, high = 0;

    bool holds(double value) const { return value >= low && value <= high; }
};

/// Fat in 100 g of a cut.
PlausibleRange plausible_fat(const Ingredient& ingredient);

/// Nothing where no pH is reckoned with.
std::optional<PlausibleRange> plausible_ph(const Ingredient& ingredient);

/// Whether it is more acid than anything else: lactic acid by the bottle, and no vinegar.
bool is_bought_as_acid(const Ingredient& ingredient);

/// Acid in 100 g, as its main acid; nothing for a food that is no acid.
std::optional<PlausibleRange> plausible_acid(const Ingredient& ingredient);

/// Capsaicinoids, mg/kg of the food as it is; nothing for a food that has none.
std::optional<PlausibleRange> plausible_heat(const Ingredient& ingredient);

/// The acid that makes up most of an acid food; nothing for any other food.
std::optional<Acid> main_acid(const Ingredient& ingredient);

}  // namespace standin
