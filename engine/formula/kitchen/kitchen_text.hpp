// A kitchen file: one fact a line, as a maker writes it; # starts a comment.
//   pork shoulder: 25 % fat          cider vinegar 5 %             scale: 5 g
//   pork shoulder: pH 5.7            serranos this year: hot       pan loss: 22 %
//   bunch of parsley: 60 g           chard trim: 40 %              batch pH: 5.4
#pragma once

#include <string_view>

#include "knowledge/index/knowledge.hpp"
#include "standin/kitchen.hpp"
#include "standin/result.hpp"

namespace standin {

/// All facts, or every fault with its place.
Result<Kitchen> read_kitchen(std::string_view text, std::string_view file, const Knowledge& knowledge);

/// Whether a text is a kitchen file and neither formula nor list of what is on hand: every line tells a fact.
bool looks_like_kitchen(std::string_view text, std::string_view file, const Knowledge& knowledge);

}  // namespace standin
