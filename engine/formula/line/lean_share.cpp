#include "formula/line/lean_share.hpp"

#include <cstdlib>

namespace standin {

std::optional<LeanShare> lean_share(const std::vector<Word>& words, std::size_t first) {
    if (first >= words.size()) return std::nullopt;
    const std::string& word = words[first].folded;
    char* end = nullptr;
    const double number = std::strtod(word.c_str(), &end);
    if (end == word.c_str() || number <= 0 || number >= 100) return std::nullopt;
    if (*end == '/') {
        char* behind = nullptr;
        const double fat = std::strtod(end + 1, &behind);
        if (*behind == '\0' && number + fat == 100) return LeanShare{number, first, first + 1};
        return std::nullopt;
    }
    std::size_t at = first + 1;
    if (*end == '\0' && at < words.size() && words[at].folded == "%") ++at;
    else if (std::string_view(end) != "%") return std::nullopt;
    if (at >= words.size()) return std::nullopt;
    if (words[at].folded == "lean") return LeanShare{number, first, at + 1};
    if (words[at].folded == "fat") return LeanShare{100 - number, first, at + 1};
    return std::nullopt;
}

}  // namespace standin
