#include "knowledge/words/hazard_text.hpp"

#include <utf8.h>

#include <algorithm>
#include <bitset>
#include <cstdint>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "knowledge/words/forbidden.hpp"

namespace standin {
namespace {

constexpr std::uint32_t full_width_first = 0xFF01, full_width_last = 0xFF5E, full_width_shift = 0xFEE0;

bool is_invisible(std::uint32_t point) {
    return point == 0xAD || (point >= 0x200B && point <= 0x200F) || point == 0x2060 || point == 0xFEFF ||
           (point >= 0x300 && point <= 0x36F);
}

// Lower case of Greek and Cyrillic; other scripts here have no case.
std::uint32_t lowered(std::uint32_t point) {
    if ((point >= 0x391 && point <= 0x3A9) || (point >= 0x410 && point <= 0x42F)) return point + 0x20;
    if (point >= 0x400 && point <= 0x40F) return point + 0x50;
    return point;
}

std::uint32_t without_accent(std::uint32_t point) {
    constexpr std::uint32_t pairs[][2]{{0x3AC, 0x3B1}, {0x3AD, 0x3B5}, {0x3AE, 0x3B7}, {0x3AF, 0x3B9}, {0x3CC, 0x3BF},
                                       {0x3CD, 0x3C5}, {0x3CE, 0x3C9}, {0x3C2, 0x3C3}, {0x386, 0x3B1}, {0x388, 0x3B5},
                                       {0x389, 0x3B7}, {0x38A, 0x3B9}, {0x38C, 0x3BF}, {0x38E, 0x3C5}, {0x38F, 0x3C9}};
    for (const auto& [from, to] : pairs)
        if (point == from) return to;
    return point;
}

bool is_letter_beyond_latin(std::uint32_t point) {
    const bool punctuation = (point >= 0x2000 && point <= 0x2BFF) || (point >= 0x3000 && point <= 0x303F) || point >= 0xFE00;
    const bool latin = point >= 0x1E00 && point <= 0x1EFF;  // Vietnamese
    return point >= 0x370 && !punctuation && !latin;
}

// A sign behind which another clause begins.
bool ends_clause(std::uint32_t point) {
    constexpr std::uint32_t dashes[]{0x2013, 0x2014};
    constexpr std::string_view signs = ".,;:!?()\n";
    return (point < 0x80 && signs.find(static_cast<char>(point)) != std::string_view::npos) ||
           std::find(std::begin(dashes), std::end(dashes), point) != std::end(dashes);
}

void add(std::uint32_t point, std::string& word, std::vector<std::string>& words) {
    const auto end = [&] {
        if (!word.empty()) words.push_back(std::move(word));
        word.clear();
    };
    if (point == '\'' || point == 0x2019) {  // "d'arachide", but "baker's"
        if (word == "d" || word == "l" || word == "dell" || word == "all") end();
        return;
    }
    if (is_invisible(point)) return;
    if (point >= full_width_first && point <= full_width_last) point -= full_width_shift;
    if (is_letter_beyond_latin(point)) {
        utf8::append(without_accent(lowered(point)), std::back_inserter(word));
        return;
    }
    if (point == '#' || point == '%') {
        if (point == '%') end();
        word += static_cast<char>(point);
        return;
    }
    if (point < 0x80) {
        const char c = static_cast<char>(point);
        if (c >= 'A' && c <= 'Z') word += static_cast<char>(c - 'A' + 'a');
        else if ((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9')) word += c;
        else end();
        return;
    }
    std::string letter;
    utf8::append(point, std::back_inserter(letter));
    const std::string plain = fold(letter);
    if (plain.empty()) end();
    else word += plain;
}

bool word_fits(std::string_view pattern, std::string_view word) {
    const bool before = !pattern.empty() && pattern.front() == '*', after = pattern.size() > 1 && pattern.back() == '*';
    if (before) pattern.remove_prefix(1);
    if (after) pattern.remove_suffix(1);
    if (before && after) return word.find(pattern) != std::string_view::npos;
    if (after) return word.substr(0, pattern.size()) == pattern;
    if (before) return word.size() >= pattern.size() && word.substr(word.size() - pattern.size()) == pattern;
    return word == pattern;
}

}  // namespace

std::size_t fits_at(std::string_view pattern, const std::vector<std::string>& words, std::size_t first) {
    std::size_t at = first;
    for (std::size_t start = 0; start < pattern.size(); ++at) {
        const auto end = std::min(pattern.find(' ', start), pattern.size());
        if (at >= words.size() || !word_fits(pattern.substr(start, end - start), words[at])) return 0;
        start = end + 1;
    }
    return at - first;
}

namespace {

// How the words of a text begin: most patterns begin otherwise and need no closer look.
class Beginnings {
public:
    explicit Beginnings(const std::vector<std::string>& words) {
        for (const auto& word : words) seen_.set(key(word));
    }

    bool may_hold(std::string_view pattern) const {
        const bool open = pattern.size() < 2 || pattern[0] == '*' || pattern[1] == '*' || pattern[1] == ' ';
        return open || seen_.test(key(pattern));
    }

private:
    static std::size_t key(std::string_view word) {
        const auto byte = [&](std::size_t i) { return i < word.size() ? static_cast<unsigned char>(word[i]) : 0U; };
        return byte(0) * 256U + byte(1);
    }

    std::bitset<std::size_t{256} * 256> seen_;
};

bool stands(const std::vector<std::string>& patterns, const std::vector<std::string>& words) {
    for (const auto& pattern : patterns)
        for (std::size_t i = 0; i < words.size(); ++i)
            if (fits_at(pattern, words, i) > 0) return true;
    return false;
}

// Whether one of the patterns stands over the word at `place`.
bool covered(const std::vector<std::string>& patterns, const std::vector<std::string>& words, std::size_t place) {
    for (const auto& pattern : patterns)
        for (std::size_t i = 0; i <= place; ++i)
            if (i + fits_at(pattern, words, i) > place) return true;
    return false;
}

// Where the words begin that say nothing between a denial and what it denies.
std::size_t past_between(const std::vector<std::string>& words, std::size_t at, const Denials& denials) {
    while (at > 0 && contains(denials.between, words[at - 1])) --at;
    return at;
}

// How many words the longest denial has that ends at `at`; zero: none does.
std::size_t denial_before(const std::vector<std::string>& words, std::size_t at, const Denials& denials) {
    std::size_t longest = 0;
    for (const auto& denial : denials.before) {
        const auto length = static_cast<std::size_t>(std::count(denial.begin(), denial.end(), ' ')) + 1;
        if (at >= length && length > longest && fits_at(denial, words, at - length) == length) longest = length;
    }
    return longest;
}

// "Nitrite-free", "laktosefrei", "leaves removed".
bool is_freed(const std::vector<std::string>& words, std::size_t first, std::size_t last, const Denials& denials) {
    if (last < words.size() && contains(denials.after, words[last])) return true;
    const std::string& word = words[std::max(first + 1, last) - 1];
    return last > first && (word.ends_with("frei") || word.ends_with("vrij")) && word.size() > 6;
}

bool denied_before(const std::vector<std::string>& words, std::size_t first, const Denials& denials) {
    return denial_before(words, past_between(words, first, denials), denials) > 0;
}

// "no nitrite", "without any added cure", "nitrite-free", "leaves removed". What stands between must say nothing by itself. What is "not
// nitrite-free", or "cannot be guaranteed free from" it, holds it.
bool denied(const std::vector<std::string>& words, std::size_t first, std::size_t last, const Denials& denials) {
    const std::size_t at = denial_before(words, first, denials) > 0 ? first : past_between(words, first, denials);  // "instead of"
    const std::size_t length = denial_before(words, at, denials);
    if (is_freed(words, first, last, denials)) return length == 0 || length > 1;  // "no" before it turns it round
    return length > 0 && (length == 1 || !denied_before(words, at - length, denials));
}

// How many words before `at` name an allergen; zero: none does.
std::size_t allergen_before(const std::vector<std::string>& words, std::size_t at, const Lexicon& lexicon) {
    constexpr std::size_t longest = 3;  // words
    for (std::size_t length = std::min(at, longest); length > 0; --length)
        for (const auto& hazard : lexicon.hazards)
            if (hazard.act == HazardAct::declare)
                for (const auto& pattern : hazard.words)
                    if (fits_at(pattern, words, at - length) == length) return length;
    return 0;
}

bool is_and(const std::string& word) {
    return word == "and" || word == "or" || word == "nor" || word == "und" || word == "oder" || word == "et" || word == "ou";
}

// "free from milk, egg and lupin", "no nuts or sesame": a denial goes for all of its list. After a bare "no" only "or" makes one.
bool denied_in_list(const std::vector<std::string>& words, std::size_t first, std::size_t last, const Lexicon& lexicon) {
    bool joined = false, ands = false;
    const auto join = [&](const std::string& word) {
        joined = true;
        ands = ands || (word != "or" && word != "nor" && word != "oder" && word != "ou");
    };
    std::size_t at = first, names = 0;
    while (at > 0) {
        if (is_and(words[at - 1])) join(words[--at]);
        else if (const auto length = allergen_before(words, at, lexicon)) at -= length, ++names;
        else break;
    }
    for (std::size_t end = last; !joined && end < words.size(); ++end) {
        if (is_and(words[end])) join(words[end]);
        else if (allergen_before(words, end + 1, lexicon) == 0) break;
    }
    if (names == 0 || !joined) return false;
    const std::size_t start = past_between(words, at, lexicon.denials), length = denial_before(words, start, lexicon.denials);
    if (length == 0 || (length > 1 && denied_before(words, start - length, lexicon.denials))) return false;
    const std::string& opener = words[start - length];
    return !ands || length > 1 || (opener != "no" && opener != "not" && opener != "never");
}

}  // namespace

bool fits_any(const std::vector<std::string>& patterns, std::string_view word) {
    return std::any_of(patterns.begin(), patterns.end(), [&](const std::string& pattern) { return word_fits(pattern, word); });
}

bool is_denied(const HazardText& text, std::size_t first, std::size_t last, const Lexicon& lexicon) {
    return denied(text.words, first, last, lexicon.denials) || denied_in_list(text.words, first, last, lexicon);
}

bool is_said_not_free(const HazardText& text, std::size_t first, std::size_t last, const Lexicon& lexicon) {
    const auto& words = text.words;
    const std::size_t at = past_between(words, first, lexicon.denials), length = denial_before(words, at, lexicon.denials);
    if (is_freed(words, first, last, lexicon.denials)) return length == 1;
    return length > 1 && denied_before(words, at - length, lexicon.denials);
}

bool ends_in_denial(std::string_view before, const Lexicon& lexicon) {
    const auto words = hazard_text(before).words;
    return denied(words, words.size(), words.size(), lexicon.denials);
}

bool only_sounds_so(const HazardText& text, std::size_t place, std::string_view allergen, const Lexicon& lexicon) {
    return std::any_of(lexicon.hazards.begin(), lexicon.hazards.end(), [&](const Hazard& hazard) {
        return hazard.act == HazardAct::declare && hazard.allergen == allergen && covered(hazard.but_not, text.words, place);
    });
}

void HazardText::append(const HazardText& other) {
    clauses.resize(words.size());
    const std::size_t next = words.empty() ? 0 : clauses.back() + 1;
    for (std::size_t i = 0; i < other.words.size(); ++i) {
        words.push_back(other.words[i]);
        clauses.push_back(next + other.clause_of(i));
    }
}

HazardText hazard_text(std::string_view text) {
    HazardText out;
    std::string word;
    std::size_t clause = 0;
    for (auto place = text.begin(); place != text.end();) {
        try {
            const std::uint32_t point = utf8::next(place, text.end());
            add(point, word, out.words);
            out.clauses.resize(out.words.size(), clause);
            if (ends_clause(point)) ++clause;
        } catch (const utf8::exception&) {
            ++place;
        }
    }
    if (!word.empty()) out.words.push_back(std::move(word));
    out.clauses.resize(out.words.size(), clause);
    return out;
}

std::string hazard_fold(std::string_view text) {
    std::string out;
    for (const auto& word : hazard_text(text).words) out += (out.empty() ? "" : " ") + word;
    return out;
}

std::vector<HazardMatch> hazards_in(const HazardText& text, const Lexicon& lexicon) {
    std::vector<HazardMatch> found;
    const auto& words = text.words;
    const Beginnings beginnings(words);
    for (const auto& hazard : lexicon.hazards) {
        const std::size_t before = found.size();
        for (const auto& pattern : hazard.words) {
            if (!beginnings.may_hold(pattern)) continue;
            for (std::size_t i = 0; i < words.size() && found.size() == before; ++i) {
                const std::size_t count = fits_at(pattern, words, i);
                if (count == 0) continue;
                if (denied(words, i, i + count, lexicon.denials) && !is_urged(text, i, lexicon.prohibitions)) continue;
                const bool declares = hazard.act == HazardAct::declare;
                const bool not_free = declares && is_said_not_free(text, i, i + count, lexicon);
                if (!not_free && covered(hazard.but_not, words, i)) continue;
                if (declares && denied_in_list(words, i, i + count, lexicon)) continue;
                if (!declares && is_forbidden(text, i, i + count, lexicon.prohibitions)) continue;
                std::string said;
                for (std::size_t at = i; at < i + count; ++at) said += (said.empty() ? "" : " ") + words[at];
                found.push_back({&hazard, i, i + count, std::move(said)});
            }
        }
        if (found.size() == before) continue;
        const bool elsewhere = (!hazard.with.empty() && !stands(hazard.with, words)) || stands(hazard.unless, words);
        if (elsewhere) found.resize(before);
    }
    return found;
}

}  // namespace standin
