// The bench sheet in a maker's words, for whatever page shows it.
#pragma once

#include <string>

#include "command.hpp"
#include "standin/sheet.hpp"

namespace standin::cli {

/// "29 patties of 110 g raw, 80-92 g cooked".
std::string pieces(const SheetYield& makes, Units units);

/// "12 min, the 10 mm plate, no warmer than 4 C, stop at 10 C"; empty where nothing is measured.
std::string measured(const SheetStep& step, Units units);

/// "320 g spinach gives about 300 g", "22 g garlic".
std::string part(const StepPart& part, const Sheet& sheet, Units units);

/// Whether a step makes a line heavier or lighter by enough to say so.
bool changes_weight(const StepPart& part);

/// "In 5100 g, out 3700 g"; empty where its one part says it all.
std::string in_and_out(const SheetStep& step, Units units);

/// "2 bunches", "700 g", "1 packet of 30 g".
std::string to_buy(const Purchase& purchase, Units units);
/// "320 g ready, 445 g as bought".
std::string what_for(const Purchase& purchase, Units units);

/// "usual: the formula does not say"; empty where it does.
std::string how_known(const SheetStep& step);

}  // namespace standin::cli
