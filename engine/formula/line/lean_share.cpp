#include "formula/line/lean_share.hpp"

#include "standin/number_text.hpp"

namespace standin {

std::optional<LeanShare> lean_share(const std::vector<Word>& words, std::size_t first) {
    if (first >= words.size()) return std::nullopt;
    std::string_view rest = words[first].folded;
    const auto taken = take_number(rest);
    if (!taken || *taken <= 0 || *taken >= 100) return std::nullopt;
    const double number = *taken;
    if (rest.starts_with('/')) {
        const auto fat = number_in(rest.substr(1));
        return fat && number + *fat == 100 ? std::optional(LeanShare{number, first, first + 1}) : std::nullopt;
    }
    std::size_t at = first + 1;
    if (rest.empty() && at < words.size() && words[at].folded == "%") ++at;
    else if (rest != "%") return std::nullopt;
    if (at >= words.size()) return std::nullopt;
    if (words[at].folded == "lean") return LeanShare{number, first, at + 1};
    if (words[at].folded == "fat") return LeanShare{100 - number, first, at + 1};
    return std::nullopt;
}

}  // namespace standin
