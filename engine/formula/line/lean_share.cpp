#include "formula/line/lean_share.hpp"

#include <cmath>
#include <string>
#include <utility>

#include "standin/number_text.hpp"

namespace standin {
namespace {

std::string_view word_at(const std::vector<Word>& words, std::size_t i) {
    return i < words.size() ? std::string_view(words[i].folded) : std::string_view();
}

// "two thirds", "one quarter", "2/3", "half": the percentage, and the word behind it.
std::optional<std::pair<double, std::size_t>> part_at(const std::vector<Word>& words, std::size_t first) {
    constexpr std::string_view counts[]{"one", "two", "three"};
    const auto here = word_at(words, first);
    if (here == "half") return std::pair(50.0, first + 1);
    if (const auto stroke = here.find('/'); stroke != std::string_view::npos) {
        const auto above = number_in(here.substr(0, stroke)), below = number_in(here.substr(stroke + 1));
        if (above && below && *above > 0 && *above < *below) return std::pair(100 * *above / *below, first + 1);
        return std::nullopt;
    }
    const auto next = word_at(words, first + 1);
    const double parts = next == "third" ? 3 : next == "quarter" ? 4 : next == "fifth" ? 5 : 0;
    for (std::size_t n = 0; n < 3 && parts > 0; ++n)
        if (here == counts[n] || here == std::to_string(n + 1)) return std::pair(100 * static_cast<double>(n + 1) / parts, first + 2);
    return std::nullopt;
}

// "two thirds lean", "one quarter fat", "2/3 lean 1/3 fat"
std::optional<LeanShare> wordy_share(const std::vector<Word>& words, std::size_t first) {
    constexpr double same = 0.5;  // of a hundred, judgement
    const auto part = part_at(words, first);
    if (!part || part->first <= 0 || part->first >= 100) return std::nullopt;
    const auto [share, next] = *part;
    const bool lean = word_at(words, next) == "lean";
    if (!lean && word_at(words, next) != "fat") return std::nullopt;
    LeanShare out{lean ? share : 100 - share, first, next + 1};
    std::size_t rest = out.last;
    while (word_at(words, rest) == "and" || word_at(words, rest) == "to") ++rest;
    const auto other = part_at(words, rest);
    const bool completes = other && std::abs(share + other->first - 100) < same && word_at(words, other->second) == (lean ? "fat" : "lean");
    if (completes) out.last = other->second + 1;
    return out;
}

}  // namespace

std::optional<LeanShare> lean_share(const std::vector<Word>& words, std::size_t first) {
    const auto about = word_at(words, first);
    if (about == "about" || about == "approx" || about == "approximately" || about == "around" || about == "roughly" || about == "ca") {
        auto told = first + 1 < words.size() ? lean_share(words, first + 1) : std::nullopt;
        if (told) told->first = first;
        return told;
    }
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
    if (rest == "vl" || (rest.empty() && word_at(words, first + 1) == "vl"))  // visual lean
        return LeanShare{number, first, first + (rest.empty() ? 2 : 1)};
    std::size_t at = first + 1;
    if (rest.empty() && at < words.size() && words[at].folded == "%") ++at;
    else if (rest != "%") return std::nullopt;
    if (at >= words.size()) return std::nullopt;
    if (words[at].folded == "lean") return LeanShare{number, first, at + 1};
    if (words[at].folded == "fat") return LeanShare{100 - number, first, at + 1};
    return std::nullopt;
}

}  // namespace standin
