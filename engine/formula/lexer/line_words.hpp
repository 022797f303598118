// A line cut into words.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace standin {

struct Word {
    std::string raw, folded;
    std::size_t begin = 0, end = 0;  ///< in the line
    std::size_t segment = 0;         ///< one more after each comma, semicolon, colon or dash between blanks
};

std::vector<Word> words_of(std::string_view line);

/// The words [first, last) as written, with a blank between.
std::string phrase(const std::vector<Word>& words, std::size_t first, std::size_t last);

}  // namespace standin
