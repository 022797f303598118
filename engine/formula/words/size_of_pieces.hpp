// How large food is cut, in the words of a line: "into 1-inch cubes", "through a 4.5 mm plate".
#pragma once

#include <cstddef>
#include <vector>

#include "formula/lexer/line_words.hpp"
#include "knowledge/index/knowledge.hpp"

namespace standin {

/// The end of such words that start at `i` and stand before `last`; `i` itself where none do.
std::size_t size_of_pieces(const std::vector<Word>& words, std::size_t i, std::size_t last, const Knowledge& knowledge);

}  // namespace standin
