// The parts of a kitchen line about a food: the share that is left of it, what a measure of it weighs, its name.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>

#include "knowledge/index/knowledge.hpp"
#include "knowledge/index/plausible.hpp"

namespace standin {

struct FoodShare {
    double usable_pct = 100;
    bool told = true;  ///< false: a bare "40 %", which may be anything
};

/// "trim: 40 %", "40 % waste", "60 % usable"; taken out of `text`, which keeps its length.
std::optional<FoodShare> take_share(std::string& text, const Knowledge& knowledge);

struct FoodMeasure {
    std::string word;  ///< "bunch"; "piece" where a number of the food itself was weighed
    double grams = 0;  ///< of one
};

/// Whether a name is that of a food.
using KnownName = std::function<bool(const std::string&)>;

/// "bunch of ...: 60 g", "... 6 g each", "3 ...: 20 g"; taken out of `text`.
std::optional<FoodMeasure> take_measure(std::string& text, const KnownName& known, const Knowledge& knowledge);

/// Grams that one such measure can weigh at all.
PlausibleRange plausible_measure(const std::string& word, const Ingredient& ingredient);

struct FoodName {
    std::string name;
    std::size_t at = 0;  ///< in the text
};

/// What is left once signs and words like "my", "this year", "of" are off both ends.
FoodName food_name(const std::string& text, const Knowledge& knowledge);

}  // namespace standin
