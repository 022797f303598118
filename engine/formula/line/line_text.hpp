// One line of a formula in words: an amount, a name, preparations, marks.
//   300 g blanched spinach            weighed after blanching
//   300 g spinach, blanched 3 min     weighed first
//   salt, 18 g      salt 1.8 % of meat      4 serranos (24 g), seeded [keep]
#pragma once

#include <optional>
#include <string_view>

#include "formula/amounts/shares.hpp"
#include "formula/lexer/trouble.hpp"
#include "formula/line/by_share.hpp"
#include "knowledge/index/knowledge.hpp"
#include "standin/result.hpp"

namespace standin {

/// Whether the amount is of the prepared food, where that is said apart from the words of the line.
using WeighedAfter = std::optional<bool>;

/// Reads one line. Every word must be known; nothing is guessed. `around`: the rest of the formula, once it is known.
Result<ReadLine> read_line(std::string_view line, const Origin& origin, const Knowledge& knowledge, WeighedAfter after = {},
                           bool on_the_shelf = false, const Around& around = {});

}  // namespace standin
