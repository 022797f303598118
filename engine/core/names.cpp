#include "core/names.hpp"

#include <utf8.h>

#include <algorithm>
#include <array>
#include <bit>
#include <cstdint>

namespace standin {
namespace {

// Letters with their base letter; Latin-1, Latin Extended-A, Romanian, pinyin and Vietnamese as trade words need them.
struct Folding {
    std::uint32_t from, to;
    char letter;
};
constexpr std::array foldings{
    Folding{0xC0, 0xC5, 'a'},     Folding{0xC7, 0xC7, 'c'},     Folding{0xC8, 0xCB, 'e'},     Folding{0xCC, 0xCF, 'i'},
    Folding{0xD1, 0xD1, 'n'},     Folding{0xD2, 0xD6, 'o'},     Folding{0xD8, 0xD8, 'o'},     Folding{0xD9, 0xDC, 'u'},
    Folding{0xDD, 0xDD, 'y'},     Folding{0xE0, 0xE5, 'a'},     Folding{0xE7, 0xE7, 'c'},     Folding{0xE8, 0xEB, 'e'},
    Folding{0xEC, 0xEF, 'i'},     Folding{0xF1, 0xF1, 'n'},     Folding{0xF2, 0xF6, 'o'},     Folding{0xF8, 0xF8, 'o'},
    Folding{0xF9, 0xFC, 'u'},     Folding{0xFD, 0xFD, 'y'},     Folding{0xFF, 0xFF, 'y'},     Folding{0x100, 0x105, 'a'},
    Folding{0x106, 0x10D, 'c'},   Folding{0x10E, 0x111, 'd'},   Folding{0x112, 0x11B, 'e'},   Folding{0x11C, 0x123, 'g'},
    Folding{0x124, 0x127, 'h'},   Folding{0x128, 0x131, 'i'},   Folding{0x139, 0x142, 'l'},   Folding{0x143, 0x148, 'n'},
    Folding{0x14C, 0x151, 'o'},   Folding{0x154, 0x159, 'r'},   Folding{0x15A, 0x161, 's'},   Folding{0x162, 0x167, 't'},
    Folding{0x136, 0x138, 'k'},   Folding{0x168, 0x173, 'u'},   Folding{0x174, 0x175, 'w'},   Folding{0x176, 0x178, 'y'},
    Folding{0x179, 0x17E, 'z'},   Folding{0x1A0, 0x1A1, 'o'},   Folding{0x1AF, 0x1B0, 'u'},   Folding{0x1CD, 0x1CE, 'a'},
    Folding{0x1CF, 0x1D0, 'i'},   Folding{0x1D1, 0x1D2, 'o'},   Folding{0x1D3, 0x1DC, 'u'},   Folding{0x218, 0x219, 's'},
    Folding{0x21A, 0x21B, 't'},   Folding{0x1EA0, 0x1EB7, 'a'}, Folding{0x1EB8, 0x1EC7, 'e'}, Folding{0x1EC8, 0x1ECB, 'i'},
    Folding{0x1ECC, 0x1EE3, 'o'}, Folding{0x1EE4, 0x1EF1, 'u'}, Folding{0x1EF2, 0x1EF9, 'y'}};

void fold_letter(std::uint32_t point, std::string& out) {
    if (point < 0x80) {
        const char c = static_cast<char>(point);
        if (c >= 'A' && c <= 'Z') out += static_cast<char>(c - 'A' + 'a');
        else if ((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '%' || c == '/' || c == '.') out += c;
        else if (c != '\'') out += ' ';
        return;
    }
    if (point == 0xDF) out += "ss";
    else if (point == 0x153 || point == 0x152) out += "oe";
    else if (point == 0xE6 || point == 0xC6) out += "ae";
    else if (point == 0x2019 || (point >= 0x300 && point <= 0x36F)) return;  // typographic apostrophe, combining accents
    else {
        const auto* found =
            std::find_if(foldings.begin(), foldings.end(), [&](const Folding& f) { return point >= f.from && point <= f.to; });
        out += found == foldings.end() ? ' ' : found->letter;
    }
}

bool ends_with(std::string_view word, std::string_view end) {
    return word.size() > end.size() + 1 && word.substr(word.size() - end.size()) == end;
}

std::string singular(std::string_view word) {
    const auto cut = [&](std::size_t n, std::string_view add = "") { return std::string(word.substr(0, word.size() - n)).append(add); };
    if (word == "eis") return std::string(word);  // German for ice, and no plural of an egg
    if (word == "leaves") return "leaf";
    if (word == "halves") return "half";
    if (word == "loaves") return "loaf";
    if (word == "chillies" || word == "chilies") return cut(2);
    if (word == "chilis" || word == "chillis") return cut(1);
    if (ends_with(word, "ies") && word.size() > 4) return cut(3, "y");
    if (ends_with(word, "oes") || ends_with(word, "ches") || ends_with(word, "shes") || ends_with(word, "xes") || ends_with(word, "sses"))
        return word == "chiles" ? "chile" : cut(2);
    if (ends_with(word, "s") && !ends_with(word, "ss") && !ends_with(word, "us") && !ends_with(word, "is")) return cut(1);
    return std::string(word);
}

// Letters that one has and the other has not: an edit brings one at most, and takes one away.
std::size_t letters_apart(std::string_view a, std::string_view b) {
    const auto letters = [](std::string_view text) {
        std::uint64_t set = 0;
        for (const char c : text) set |= std::uint64_t{1} << (static_cast<unsigned char>(c) % 64U);
        return set;
    };
    const std::uint64_t of_a = letters(a), of_b = letters(b);
    return static_cast<std::size_t>(std::max(std::popcount(of_a & ~of_b), std::popcount(of_b & ~of_a)));
}

bool shares_word(std::string_view a, std::string_view b) {
    std::size_t start = 0;
    while (start < a.size()) {
        const auto end = std::min(a.find(' ', start), a.size());
        const auto word = a.substr(start, end - start);
        if (word.size() > 3) {
            const auto at = b.find(word);
            if (at != std::string_view::npos && (at == 0 || b[at - 1] == ' ') &&
                (at + word.size() == b.size() || b[at + word.size()] == ' '))
                return true;
        }
        start = end + 1;
    }
    return false;
}

}  // namespace

std::string fold(std::string_view text) {
    std::string letters;
    auto place = text.begin();
    letters.reserve(text.size());
    while (place != text.end()) {
        if (static_cast<unsigned char>(*place) < 0x80) {
            fold_letter(static_cast<unsigned char>(*place++), letters);
            continue;
        }
        try {
            fold_letter(utf8::next(place, text.end()), letters);
        } catch (const utf8::exception&) {
            ++place;
        }
    }
    std::string out;
    for (std::size_t start = 0; start < letters.size();) {
        const auto end = std::min(letters.find(' ', start), letters.size());
        if (end > start) {
            if (!out.empty()) out += ' ';
            out += singular(std::string_view(letters).substr(start, end - start));
        }
        start = end + 1;
    }
    return out;
}

std::size_t edit_distance(std::string_view a, std::string_view b, std::size_t limit) {
    constexpr std::size_t usual = 48;  // letters: names longer than that are rare
    if (a.size() > b.size()) std::swap(a, b);
    if (b.size() - a.size() > limit || letters_apart(a, b) > limit) return limit + 1;
    std::array<std::size_t, 3 * usual> small;
    std::vector<std::size_t> large(a.size() < usual ? 0 : 3 * (a.size() + 1));
    std::size_t* before = large.empty() ? small.data() : large.data();
    std::size_t* last = before + a.size() + 1;
    std::size_t* row = last + a.size() + 1;
    for (std::size_t i = 0; i <= a.size(); ++i) last[i] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
        row[0] = j;
        std::size_t least = j;
        for (std::size_t i = 1; i <= a.size(); ++i) {
            row[i] = std::min({last[i] + 1, row[i - 1] + 1, last[i - 1] + (a[i - 1] == b[j - 1] ? 0U : 1U)});
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]) row[i] = std::min(row[i], before[i - 2] + 1);
            least = std::min(least, row[i]);
        }
        if (least > limit) return limit + 1;
        std::swap(before, last);
        std::swap(last, row);
    }
    return std::min(last[a.size()], limit + 1);
}

std::size_t slip_limit(std::string_view folded) {
    constexpr std::size_t long_name = 8;  // letters
    return folded.size() >= long_name ? 2 : 1;
}

std::vector<std::size_t> nearest(std::string_view wanted, const std::vector<std::string_view>& known, std::size_t most) {
    struct Match {
        std::size_t cost, index;
        bool operator<(const Match& other) const { return cost != other.cost ? cost < other.cost : index < other.index; }
    };
    const std::size_t limit = std::max<std::size_t>(1, wanted.size() / 3);
    std::vector<Match> matches;
    for (std::size_t i = 0; i < known.size(); ++i) {
        const auto edits = edit_distance(wanted, known[i], limit);
        if (edits <= limit) matches.push_back({edits, i});
        else if (shares_word(wanted, known[i]))
            matches.push_back(
                {limit + 1 + (known[i].size() > wanted.size() ? known[i].size() - wanted.size() : wanted.size() - known[i].size()), i});
    }
    std::sort(matches.begin(), matches.end());
    std::vector<std::size_t> best;
    for (const auto& match : matches) {
        if (best.size() == most) break;
        best.push_back(match.index);
    }
    return best;
}

}  // namespace standin
