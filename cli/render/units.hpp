// Weights, lengths and temperatures in the maker's units, rounded the way a kitchen scale and a thermometer show them.
#pragma once

#include <string>

#include "command.hpp"
#include "standin/prediction.hpp"

namespace standin::cli {

/// What the maker weighed in, by the amounts as written: pounds and ounces, or grams.
Units units_of(const Formula& formula);

/// Whether an amount as written is a weight: "1.2 kg", "8 oz", "1.7 % of meat"; a cup, a spoon or a pod is none.
bool says_weight(const std::string& written);

/// A weight that stands in a formula: "2400 g", "18.5 g"; "5 lb 4.7 oz".
std::string formula_weight(double grams, Units units);

/// 1 g from `step` 1 up, 0.1 g with the fine scale; pounds and ounces to 0.1 oz, under 2 oz to 0.01 oz and with the grams beside them, for
/// few ounce scales are fine enough for salt.
std::string weight(double grams, Units units, double step = 1);

/// Rounded to three figures: for what nobody weighs out.
std::string about(double grams, Units units);

/// "4 C", "40 F", "4 C (40 F)".
std::string degrees(double celsius, Units units);
/// Never below what was asked: up to the next degree, both scales always.
std::string core(double celsius);
/// With the time it must be kept, where reaching it is not enough.
std::string core(const CoreAsked& asked);

/// "10 mm", "3/8 in", "10 mm (3/8 in)"; inches to the sixteenth.
std::string length(double mm, Units units);
std::string metres(double m, Units units);

/// "830 g to the metre", "9 oz to the foot".
std::string per_length(double grams_a_metre, Units units);

/// As a US shop weighs: "3/4 lb", "2 1/4 lb"; below a quarter pound, and what comes to no quarters, in ounces.
std::string shop_pounds(double grams);

/// With `most` decimals at most: "1.5", "1".
std::string trimmed_number(double value, int most);

/// "3 min", "1 h 30 min", "24 h".
std::string duration(double minutes);

}  // namespace standin::cli
