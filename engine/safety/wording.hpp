// Small wording shared by this room.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/words.hpp"
#include "knowledge/knowledge.hpp"
#include "standin/prediction.hpp"

namespace standin {

/// Whether the folded `words` stand in the folded `text`, as whole words in a row.
bool has_words(std::string_view text, std::string_view words);

/// At most two decimals, none that are zero.
std::string shown(double value);

/// A line that is in the batch, with what it is made of.
struct Present {
    const PredictedLine* line;
    const Ingredient* ingredient;
};

/// The lines of some weight, in their order.
std::vector<Present> present(const Prediction& prediction, const Knowledge& knowledge);

}  // namespace standin
