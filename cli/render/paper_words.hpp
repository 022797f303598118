// A draft label in words.
#pragma once

#include <string>

#include "standin/label.hpp"

namespace standin::cli {

inline constexpr const char* who_decides =
    "A draft: your own authority decides what a label must say, what may be sold under which name, and whether a table may be "
    "calculated or must be analysed.";

/// "Shares: pork 82 %, spinach 7 %. Many laws ask for ..."
std::string shares_sentence(const LabelDraft& draft);
/// "Per 100 g raw: energy 1040 kJ, energy 250 kcal, ...; cooked: ..."
std::string nutrition_sentence(const LabelDraft& draft);
/// "(16.2-21.4)", in the decimals of the row.
std::string nine_in_ten(const Band& band, const NutritionRow& row);

}  // namespace standin::cli
