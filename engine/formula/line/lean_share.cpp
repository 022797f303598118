#include "formula/line/lean_share.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>
#include <utility>

#include "core/contains.hpp"
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

// In the tongues that recipes come in.
bool says_fat(std::string_view word) {
    constexpr std::array<std::string_view, 11> all{"fat",    "gras",   "gra",     "grasse", "graisse", "grasa",
                                                   "grasso", "grassi", "gordura", "fett",   "mg"};
    return contains(all, word);
}

bool says_lean(std::string_view word) {
    constexpr std::array<std::string_view, 5> all{"lean", "mager", "maigre", "magro", "magra"};
    return contains(all, word);
}

// Behind the per cent sign: "fat", "of fat", "matière grasse". The word behind it, and whether fat or lean is told.
std::optional<std::pair<bool, std::size_t>> fat_or_lean(const std::vector<Word>& words, std::size_t at) {
    constexpr std::array<std::string_view, 8> between{"of", "de", "di", "matiere", "matière", "visual", "visible", "back"};
    for (int skipped = 0; skipped < 2 && contains(between, word_at(words, at)); ++skipped) ++at;
    if (says_fat(word_at(words, at))) {
        const auto next = word_at(words, at + 1);
        return std::pair(true, next == "content" || next == "left" ? at + 2 : at + 1);
    }
    if (says_lean(word_at(words, at))) return std::pair(false, at + 1);
    return std::nullopt;
}

// "about", "at least", "not over": the word behind them, and whether the figure is the most there may be.
std::pair<std::size_t, bool> past_bounds(const std::vector<Word>& words, std::size_t at) {
    constexpr std::array<std::string_view, 23> said{
        "about", "approx", "approximately", "around",  "roughly", "ca", "circa", "some",    "at", "least",      "not", "no",
        "than",  "less",   "with",          "minimum", "min",     "up", "to",    "usually", "a",  "mindestens", "env"};
    constexpr std::array<std::string_view, 5> most{"over", "more", "most", "max", "maximum"};
    bool is_most = false;
    std::size_t words_passed = 0;
    for (; words_passed < 5 && (contains(said, word_at(words, at)) || contains(most, word_at(words, at))); ++at, ++words_passed)
        is_most = is_most || contains(most, word_at(words, at)) || word_at(words, at) == "up";
    return {at, is_most};
}

// "20-25 %" as its middle; where the second figure stands.
std::optional<std::pair<double, std::size_t>> range_end(const std::vector<Word>& words, std::size_t first, double low) {
    std::size_t at = first + 1;
    if (word_at(words, at) == "to" || word_at(words, at) == "and" || word_at(words, at) == "or") ++at;
    std::string_view rest = word_at(words, at);
    const auto high = take_number(rest);
    if (!high || *high <= low || *high >= 100 || (!rest.empty() && rest != "%")) return std::nullopt;
    if (rest.empty() && word_at(words, at + 1) != "%") return std::nullopt;
    return std::pair((low + *high) / 2, at);
}

// "fat about 28 %", "fat content 25-30 %"
std::optional<LeanShare> fat_before_figure(const std::vector<Word>& words, std::size_t first) {
    if (!says_fat(word_at(words, first))) return std::nullopt;
    std::size_t at = first + 1;
    if (word_at(words, at) == "content" || word_at(words, at) == "share") ++at;
    const auto [figure, most] = past_bounds(words, at);
    std::string_view rest = word_at(words, figure);
    const auto taken = take_number(rest);
    if (!taken || *taken <= 0 || *taken >= 100) return std::nullopt;
    if (const auto range = range_end(words, figure, *taken))
        return LeanShare{100 - range->first, first, range->second + (word_at(words, range->second).ends_with('%') ? 1U : 2U), most};
    if (rest == "%") return LeanShare{100 - *taken, first, figure + 1, most};
    if (rest.empty() && word_at(words, figure + 1) == "%") return LeanShare{100 - *taken, first, figure + 2, most};
    return std::nullopt;
}

}  // namespace

bool tells_fat_figure(std::string_view text) {
    const auto words = words_of(text);
    const bool digit = text.find_first_of("0123456789") != std::string_view::npos;
    return digit && text.find_first_of("%/:") != std::string_view::npos &&
           std::any_of(words.begin(), words.end(), [](const Word& word) { return says_fat(word.folded) || says_lean(word.folded); });
}

std::optional<LeanShare> lean_share(const std::vector<Word>& words, std::size_t first) {
    if (first >= words.size()) return std::nullopt;
    const auto [start, most] = past_bounds(words, first);
    if (start > first) {
        auto told = start < words.size() && words[start].segment == words[first].segment ? lean_share(words, start) : std::nullopt;
        if (told) told->first = first, told->most_fat = told->most_fat || most;
        return told;
    }
    if (const auto told = wordy_share(words, first)) return told;
    if (const auto told = fat_before_figure(words, first)) return told;
    std::string_view rest = words[first].folded;
    const auto taken = take_number(rest);
    if (!taken || *taken <= 0 || *taken >= 100) return std::nullopt;
    double number = *taken;
    if (rest.starts_with('/')) {
        const auto fat = number_in(rest.substr(1));
        return fat && number + *fat == 100 ? std::optional(LeanShare{number, first, first + 1}) : std::nullopt;
    }
    if (rest == "vl" || (rest.empty() && word_at(words, first + 1) == "vl"))  // visual lean
        return LeanShare{number, first, first + (rest.empty() ? 2 : 1)};
    std::size_t figure = first;
    if (const auto range = range_end(words, first, number)) {
        number = range->first;
        figure = range->second;
        rest = word_at(words, figure).ends_with('%') ? "%" : "";
    }
    std::size_t at = figure + 1;
    if (rest.empty() && word_at(words, at) == "%") ++at;
    else if (rest != "%") return std::nullopt;
    const auto told = fat_or_lean(words, at);
    if (!told) return std::nullopt;
    return LeanShare{told->first ? 100 - number : number, first, told->second};
}

}  // namespace standin
