// Closed lists of what can stand in a line and say nothing about weight or kind, and of what stands where an amount should.
#pragma once

#include <cstddef>
#include <string_view>
#include <vector>

#include "formula/lexer/line_words.hpp"
#include "knowledge/index/knowledge.hpp"

namespace standin {

/// How many words from `first` on make a phrase that can be passed over: "fresh", "finely", "skin on". Zero when it is no such.
std::size_t passable(const std::vector<Word>& words, std::size_t first, const Knowledge& knowledge);

/// Likewise for words that tell how finely something is cut, which changes no weight: "chopped", "ground", "grated".
std::size_t cut_word(const std::vector<Word>& words, std::size_t first, const Knowledge& knowledge);

/// How many words from `first` on tell of a part that alone goes in: "green parts only"; 0 where none do.
std::size_t part_only(const std::vector<Word>& words, std::size_t first, const Knowledge& knowledge);

/// The phrase in `line` that stands where an amount should: "to taste", "a little", "some". Empty when there is none.
std::string vague_amount(std::string_view line, const Knowledge& knowledge);

}  // namespace standin
