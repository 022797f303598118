// How much a whole formula makes, where a line tells nothing else: "Batch 5 kg", "für 10 kg Brät:", "Total 5000 g".
#pragma once

#include <optional>
#include <string_view>

#include "formula/lexer/quantity_text.hpp"
#include "knowledge/index/knowledge.hpp"

namespace standin {

struct SheetSize {
    double grams = 0;
    Whole of = Whole::batch;  ///< or the meat
    bool total = false;       ///< what all lines add up to
};

/// Nothing where a word of the line may tell of something else.
std::optional<SheetSize> sheet_size(std::string_view line, const Knowledge& knowledge);

/// The weight that a title tells: "Fennel links, 25 lb batch". Nothing where it has none or more than one.
std::optional<SheetSize> size_in_title(std::string_view title, const Knowledge& knowledge);

/// "Total 100 %", "Meat total: 85.0 %": what the shares above it add up to.
bool adds_up_shares(std::string_view line, const Knowledge& knowledge);

/// Which whole the words of a heading tell that percentages are of: "Percent of meat weight"; unsaid where they tell of none.
Whole whole_in_words(std::string_view words, const Knowledge& knowledge);

}  // namespace standin
