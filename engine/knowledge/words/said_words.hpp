// Words of a sentence: put together again as they are said, and held against each other.
#pragma once

#include <algorithm>
#include <string>
#include <vector>

#include "core/names.hpp"

namespace standin {

/// Those from `first` up to `last`, or to the end; no blank before a comma that stands as a word.
inline std::string said_words(const std::vector<std::string>& words, std::size_t first, std::size_t last) {
    std::string out;
    for (std::size_t i = first; i < std::min(last, words.size()); ++i) out += (out.empty() || words[i] == "," ? "" : " ") + words[i];
    return out;
}

/// One word, however it is written; of other scripts only letter by letter.
inline bool same_word(const std::string& a, const std::string& b) {
    if (a == b) return true;
    const std::string folded = fold(a);  // empty of other scripts and of a comma
    return !folded.empty() && folded == fold(b);
}

}  // namespace standin
