// The bench sheet in a maker's words, for whatever page shows it.
#pragma once

#include <string>

#include "command.hpp"
#include "standin/sheet.hpp"

namespace standin::cli {

/// "29 patties of 110 g raw, 80-92 g cooked".
std::string pieces(const SheetYield& makes, Units units);

/// "hog casing of 32 mm"; empty where nothing is stuffed.
std::string casing(const SheetYield& makes, Units units);
/// How the length of casing comes about, and what a metre of it takes.
std::string casing_needed(const SheetYield& makes, Units units);

/// "12 min, the 10 mm plate, no warmer than 4 C, stop at 10 C"; empty where nothing is measured.
std::string measured(const SheetStep& step, Units units);

/// What goes through a step: "320 g spinach, about 300 g after; 22 g garlic. In all 340 g.", "peel 25 g garlic to 22 g." What was blended
/// is one thing afterwards. With both units in grams alone: they are there to check by.
std::string amounts(const SheetStep& step, const Sheet& sheet, Units units);

// A weight of one food is rounded as the list of weights rounds it, wherever it stands.

/// "2 bunches", "700 g", "1 1/4 lb", "1 packet of 30 g"; in both "1 packet of 30 g (1 packet of 1 oz)".
std::string to_buy(const Purchase& purchase, Units units);
/// "445 g untrimmed"; empty where nothing is cut away.
std::string untrimmed(const Purchase& purchase, const Sheet& sheet, Units units);
/// The same, or where nothing is cut away "320 g".
std::string what_for(const Purchase& purchase, const Sheet& sheet, Units units);

/// "usual"; empty where the formula gives the numbers.
/// ", 120 g there" of what the list has too little of; ", not on your list" where there is one that says nothing of it.
std::string on_hand(const Purchase& purchase, const Sheet& sheet, Units units);

std::string how_known(const SheetStep& step);
/// What that word means, where any step has it.
std::string what_usual_means(const Sheet& sheet);

}  // namespace standin::cli
