#include "words.hpp"

#include <array>
#include <cstdint>

#include "standin/number_text.hpp"

namespace standin::cli {
namespace {

struct Range {
    std::uint32_t first, last;
};

// East Asian wide and pictographs (two columns), and marks that sit on the letter before (none): the ranges met in food words.
constexpr std::array<Range, 10> wide{{{0x1100, 0x115F},
                                      {0x2E80, 0x303E},
                                      {0x3041, 0xA4CF},
                                      {0xAC00, 0xD7A3},
                                      {0xF900, 0xFAFF},
                                      {0xFE30, 0xFE6F},
                                      {0xFF00, 0xFF60},
                                      {0xFFE0, 0xFFE6},
                                      {0x1F300, 0x1FAFF},
                                      {0x20000, 0x3FFFD}}};
constexpr std::array<Range, 24> marks{{{0x00AD, 0x00AD}, {0x0300, 0x036F}, {0x0483, 0x0489}, {0x0591, 0x05BD}, {0x05BF, 0x05BF},
                                       {0x05C1, 0x05C2}, {0x05C4, 0x05C5}, {0x0610, 0x061A}, {0x064B, 0x065F}, {0x0670, 0x0670},
                                       {0x06D6, 0x06DC}, {0x0900, 0x0902}, {0x093A, 0x093A}, {0x093C, 0x093C}, {0x0941, 0x0948},
                                       {0x094D, 0x094D}, {0x0E31, 0x0E31}, {0x0E34, 0x0E3A}, {0x0E47, 0x0E4E}, {0x200B, 0x200F},
                                       {0x202A, 0x202E}, {0x2060, 0x2069}, {0x20D0, 0x20F0}, {0xFE00, 0xFE0F}}};

template <std::size_t n>
bool within(std::uint32_t point, const std::array<Range, n>& ranges) {
    for (const auto& r : ranges)
        if (point >= r.first && point <= r.last) return true;
    return false;
}

// The code point at `i`, which moves behind it. Stray bytes come out as they are.
std::uint32_t next_point(std::string_view text, std::size_t& i) {
    const auto lead = static_cast<unsigned char>(text[i++]);
    if (lead < 0xC0) return lead;
    int more = lead >= 0xF0 ? 3 : lead >= 0xE0 ? 2 : 1;
    std::uint32_t point = lead & (0x3Fu >> more);
    for (; more > 0 && i < text.size() && (static_cast<unsigned char>(text[i]) & 0xC0) == 0x80; --more)
        point = (point << 6) | (static_cast<unsigned char>(text[i++]) & 0x3Fu);
    return point;
}

// Bytes at the start of `text` that fill at most `width` columns, one character at least, marks with the letter before them.
std::size_t fitting(std::string_view text, int width) {
    int filled = 0;
    for (std::size_t i = 0; i < text.size();) {
        const std::size_t start = i;
        const auto point = next_point(text, i);
        filled += within(point, marks) ? 0 : within(point, wide) ? 2 : 1;
        if (filled > width && start > 0) return start;
    }
    return text.size();
}

std::string with_sign(double value, int decimals) {
    std::string text = number(value, decimals);
    return text.front() == '-' || text.find_first_of("123456789") == std::string::npos ? text : "+" + text;
}

}  // namespace

int display_width(std::string_view text) {
    int width = 0;
    for (std::size_t i = 0; i < text.size();) {
        if (text[i] == '\x1b') {
            while (i < text.size() && text[i] != 'm') ++i;
            if (i < text.size()) ++i;
            continue;
        }
        const auto point = next_point(text, i);
        width += within(point, marks) ? 0 : within(point, wide) ? 2 : 1;
    }
    return width;
}

std::vector<std::string> wrapped(std::string_view text, int width) {
    std::vector<std::string> lines(1);
    for (std::size_t at = 0; at < text.size();) {
        if (text[at] == '\n') lines.emplace_back();
        if (text[at] == ' ' || text[at] == '\n') {
            ++at;
            continue;
        }
        auto end = std::min(text.find_first_of(" \n", at), text.size());
        auto word = text.substr(at, end - at);
        if (word.find('\x1b') == std::string_view::npos && display_width(word) > width) {  // no line is long enough: cut it
            word = word.substr(0, fitting(word, width));
            end = at + word.size();
        }
        if (lines.back().empty()) lines.back() = word;
        else if (display_width(lines.back()) + 1 + display_width(word) <= width) lines.back().append(" ").append(word);
        else lines.emplace_back(word);
        at = end;
    }
    return lines;
}

std::string wrap(std::string_view text, int width, int indent, int hang) {
    const std::string margin(static_cast<std::size_t>(indent), ' '), deeper(static_cast<std::size_t>(indent + hang), ' ');
    std::string out;
    bool first = true;
    for (const auto& line : wrapped(text, width - hang)) {
        out += (first ? margin : "\n" + deeper) + line;
        first = false;
    }
    return out;
}

std::string number(double value, int decimals) { return fixed_text(value, decimals); }

std::string grams(double value) { return trimmed_text(value, value >= 100 ? 0 : value >= 10 ? 1 : 2) + " g"; }

std::string band(const Band& band, int decimals) {
    const auto low = number(band.low, decimals), mid = number(band.mid, decimals), high = number(band.high, decimals);
    if (low == mid && mid == high) return mid;
    return mid + " (" + low + (band.low < 0 ? " to " : "-") + high + ")";
}

std::string signed_band(const Band& band, int decimals) {
    const auto low = with_sign(band.low, decimals), mid = with_sign(band.mid, decimals), high = with_sign(band.high, decimals);
    return low == mid && mid == high ? mid : mid + " (" + low + " to " + high + ")";
}

std::string chance(double share) {
    if (share < 0.01) return "under 1 %";
    if (share > 0.99) return "over 99 %";
    return number(100 * share, 0) + " %";
}

std::string listed(const std::vector<std::string>& words) {
    std::string out;
    for (std::size_t i = 0; i < words.size(); ++i) out += (i == 0 ? "" : i + 1 == words.size() ? " and " : ", ") + words[i];
    return out;
}

std::string capital(std::string text) {
    if (!text.empty() && text.front() >= 'a' && text.front() <= 'z') text.front() = static_cast<char>(text.front() - 'a' + 'A');
    return text;
}

}  // namespace standin::cli
