#include "formula/words/lean_share.hpp"

#include <algorithm>
#include <cmath>
#include <string>
#include <utility>

#include "formula/lexer/digits.hpp"
#include "knowledge/records/word_list.hpp"
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

// Behind the per cent sign: "fat", "of fat", "matière grasse". The word behind it, and whether fat or lean is told.
std::optional<std::pair<bool, std::size_t>> fat_or_lean(const std::vector<Word>& words, std::size_t at, const Knowledge& knowledge) {
    const auto says = [&](WordList list) { return knowledge.in_list(list, word_at(words, at)); };
    for (int skipped = 0; skipped < 2 && says(WordList::between_share_and_fat); ++skipped) ++at;
    if (says(WordList::fat_word)) {
        const auto next = word_at(words, at + 1);
        return std::pair(true, knowledge.in_list(WordList::content_of_fat, next) ? at + 2 : at + 1);
    }
    if (says(WordList::lean_word)) return std::pair(false, at + 1);
    return std::nullopt;
}

// "about", "at least", "not over": the word behind them, and whether the figure is the most there may be.
std::pair<std::size_t, bool> past_bounds(const std::vector<Word>& words, std::size_t at, const Knowledge& knowledge) {
    bool is_most = false;
    std::size_t words_passed = 0;
    const auto says = [&](WordList list) { return knowledge.in_list(list, word_at(words, at)); };
    for (; words_passed < 5 && (says(WordList::about_a_share) || says(WordList::at_most_a_share)); ++at, ++words_passed)
        is_most = is_most || says(WordList::at_most_a_share);
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
std::optional<LeanShare> fat_before_figure(const std::vector<Word>& words, std::size_t first, const Knowledge& knowledge) {
    if (!knowledge.in_list(WordList::fat_word, word_at(words, first))) return std::nullopt;
    std::size_t at = first + 1;
    if (knowledge.in_list(WordList::content_of_fat, word_at(words, at))) ++at;
    const auto [figure, most] = past_bounds(words, at, knowledge);
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

bool tells_fat_figure(std::string_view text, const Knowledge& knowledge) {
    const auto words = words_of(text);
    const bool digit = has_digit(text);
    return digit && text.find_first_of("%/:") != std::string_view::npos && std::any_of(words.begin(), words.end(), [&](const Word& word) {
               return knowledge.in_list(WordList::fat_word, word.folded) || knowledge.in_list(WordList::lean_word, word.folded);
           });
}

std::optional<LeanShare> lean_share(const std::vector<Word>& words, std::size_t first, const Knowledge& knowledge) {
    if (first >= words.size()) return std::nullopt;
    const auto [start, most] = past_bounds(words, first, knowledge);
    if (start > first) {
        auto told =
            start < words.size() && words[start].segment == words[first].segment ? lean_share(words, start, knowledge) : std::nullopt;
        if (told) told->first = first, told->most_fat = told->most_fat || most;
        return told;
    }
    if (const auto told = wordy_share(words, first)) return told;
    if (const auto told = fat_before_figure(words, first, knowledge)) return told;
    std::string_view rest = words[first].folded;
    const auto taken = take_number(rest);
    if (!taken || *taken <= 0 || *taken >= 100) return std::nullopt;
    double number = *taken;
    if (rest.starts_with('/')) {
        const auto fat = number_in(rest.substr(1));
        return fat && number + *fat == 100 ? std::optional(LeanShare{number, first, first + 1}) : std::nullopt;
    }
    if (rest == "vl" || ((rest.empty() || rest == "%") && word_at(words, first + 1) == "vl"))  // visual lean
        return LeanShare{number, first, first + (rest == "vl" ? 1 : 2)};
    std::size_t figure = first;
    if (const auto range = range_end(words, first, number)) {
        number = range->first;
        figure = range->second;
        rest = word_at(words, figure).ends_with('%') ? "%" : "";
    }
    std::size_t at = figure + 1;
    if (rest.empty() && word_at(words, at) == "%") ++at;
    else if (rest != "%") return std::nullopt;
    const auto told = fat_or_lean(words, at, knowledge);
    if (!told) return std::nullopt;
    return LeanShare{told->first ? 100 - number : number, first, told->second};
}

}  // namespace standin
