#include "formula/lexer/sentences.hpp"

#include <algorithm>

namespace standin {

std::vector<std::string> sentences_of(std::string_view text) {
    std::vector<std::string> all;
    for (std::size_t start = 0; start < text.size();) {
        std::size_t end = text.find_first_of(".;!", start);
        while (end != std::string_view::npos && end + 1 < text.size() && text[end + 1] != ' ' && text[end + 1] != '\n')
            end = text.find_first_of(".;!", end + 1);
        end = std::min(end, text.size());
        if (text.substr(start, end - start).find_first_not_of(" \n") != std::string_view::npos)
            all.emplace_back(text.substr(start, end - start));
        start = end + 1;
    }
    return all;
}

}  // namespace standin
