#include "formula/line/lean_share.hpp"

#include "standin/number_text.hpp"

namespace standin {
namespace {

// "two thirds lean", "one quarter fat", "half fat"
std::optional<LeanShare> wordy_share(const std::vector<Word>& words, std::size_t first) {
    const auto at = [&](std::size_t i) { return i < words.size() ? std::string_view(words[i].folded) : std::string_view(); };
    constexpr std::string_view counts[]{"one", "two", "three"};
    double share = at(first) == "half" ? 50 : 0;
    std::size_t next = first + 1;
    for (std::size_t n = 0; n < 3 && share <= 0; ++n)
        if (at(first) == counts[n] || at(first) == std::to_string(n + 1)) {
            const double parts = at(next) == "third" ? 3 : at(next) == "quarter" ? 4 : at(next) == "fifth" ? 5 : 0;
            if (parts > 0) share = 100 * static_cast<double>(n + 1) / parts;
            ++next;
        }
    if (share <= 0 || share >= 100) return std::nullopt;
    if (at(next) == "lean") return LeanShare{share, first, next + 1};
    if (at(next) == "fat") return LeanShare{100 - share, first, next + 1};
    return std::nullopt;
}

}  // namespace

std::optional<LeanShare> lean_share(const std::vector<Word>& words, std::size_t first) {
    if (first >= words.size()) return std::nullopt;
    if (const auto told = wordy_share(words, first)) return told;
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
