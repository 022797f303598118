// How lean a cut is said to be.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "formula/lexer/line_words.hpp"
#include "knowledge/index/knowledge.hpp"

namespace standin {

/// The lean share in per cent that "85% lean", "15 % fat", "at least 20 % fat" or "85/15" tells, and the words that tell it.
struct LeanShare {
    double lean = 0;
    std::size_t first = 0, last = 0;
    bool most_fat = false;  ///< the fat may be less: "not over 15 % fat"
};
std::optional<LeanShare> lean_share(const std::vector<Word>& words, std::size_t first, const Knowledge& knowledge);

/// Whether a text tells of fat or lean by a figure.
bool tells_fat_figure(std::string_view text, const Knowledge& knowledge);

}  // namespace standin
