// Words of a sentence, put together again as they are said.
#pragma once

#include <algorithm>
#include <string>
#include <vector>

namespace standin {

/// Those from `first` up to `last`, or to the end; no blank before a comma that stands as a word.
inline std::string said_words(const std::vector<std::string>& words, std::size_t first, std::size_t last) {
    std::string out;
    for (std::size_t i = first; i < std::min(last, words.size()); ++i) out += (out.empty() || words[i] == "," ? "" : " ") + words[i];
    return out;
}

}  // namespace standin
