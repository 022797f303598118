// The same amount told twice outside brackets: "500 g / 1 lb 2 oz", "salt | 18 g | 3 tsp", "pork 500 g 1.10 lb".
#pragma once

#include <string>

#include "formula/food/line_notes.hpp"
#include "formula/lexer/quantity_text.hpp"
#include "knowledge/index/knowledge.hpp"
#include "standin/result.hpp"

namespace standin {

/// Checks a volume that is told twice; the metric one counts. Two that differ leave open which.
std::optional<Error> noted_volume(AmountText& amount, const LineNotes& notes);

/// "Juice of 2 limes (about 1/4 cup)": what is poured is measured more closely than what is counted.
void take_volume_of_count(AmountText& amount, const Ingredient& ingredient, LineNotes& notes);

/// Blanks the second telling; a weight in it counts like one in brackets. `start`: where the line begins behind bullets.
void take_second_amount(std::string& line, std::size_t start, const Knowledge& knowledge, LineNotes& notes);

}  // namespace standin
