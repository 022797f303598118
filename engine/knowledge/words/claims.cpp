#include "knowledge/words/claims.hpp"

#include <array>

#include "core/names.hpp"

namespace standin {

std::string promise_in(std::string_view text) {
    constexpr std::array<std::string_view, 4> promises{"free", "contain no", "suitable for", "safe for"};
    std::string words = " ";  // folded (plurals become singulars: "contain no"), punctuation gone
    for (const char c : text) words += c == '.' || c == ',' || c == ';' || c == ':' || c == '(' || c == ')' ? ' ' : c;
    words = " " + fold(words) + " ";
    for (const auto promise : promises)
        if (words.find(" " + std::string(promise) + " ") != std::string::npos) return std::string(promise);
    return {};
}

}  // namespace standin
