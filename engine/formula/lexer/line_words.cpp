#include "formula/lexer/line_words.hpp"

#include <cctype>

#include "core/names.hpp"
#include "formula/lexer/cursor.hpp"
#include "formula/lexer/measures.hpp"

namespace standin {
namespace {

bool in_word(char c) {
    const auto byte = static_cast<unsigned char>(c);
    return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '%' || c == '/' || c == '.' || c == '\'' ||
           byte >= 0x80;
}

// "shredded/chopped" are two words, "80/20" and "1/2" are one.
bool parts_words(std::string_view line, std::size_t i) {
    const auto letter = [&](std::size_t at) { return at < line.size() && std::isalpha(static_cast<unsigned char>(line[at])) != 0; };
    return line[i] == '/' && i > 0 && letter(i - 1) && letter(i + 1);
}

// Words cut short that stand inside names: "grnd white pepper".
std::string_view in_full(std::string_view folded) {
    if (folded == "grnd" || folded == "grd") return "ground";
    if (folded == "chpd" || folded == "choped") return "chopped";
    if (folded == "frsh") return "fresh";
    return {};
}

std::size_t word_end(std::string_view line, std::size_t i) {
    for (; i < line.size() && in_word(line[i]) && !parts_words(line, i); ++i) {
        Cursor sign(line, i);
        sign.space();
        if (sign.at() > i || sign.eat_dash() || sign.eat("\u2014")) break;
    }
    return i;
}

}  // namespace

std::vector<Word> words_of(std::string_view line) {
    std::vector<Word> words;
    std::size_t segment = 0;
    bool after_blank = true;
    for (std::size_t i = 0; i < line.size();) {
        Cursor here(line, i);
        here.space();
        const bool blank = here.at() > i;
        if (!blank && (here.eat_dash() || here.eat("\u2014"))) {
            // A dash parts the line only between blanks or doubled; in "flat-leaf" it joins.
            bool doubled = line.compare(i, 3, "\u2014") == 0;  // the long dash parts with or without blanks
            while (here.eat_dash() || here.eat("\u2014")) doubled = true;
            if (doubled || (after_blank && (here.done() || here.rest().front() == ' '))) ++segment;
        } else if (!blank) {
            const std::size_t end = word_end(line, i);
            if (line[i] == ',' || line[i] == ';' || line[i] == ':') ++segment;
            here.go(end > i ? end : i + 1);
            Word word{std::string(line.substr(i, end - i)), {}, i, end, segment};
            while (!word.raw.empty() && word.raw.back() == '.') word.raw.pop_back(), --word.end;
            if (const auto full = in_full(fold(word.raw)); !full.empty()) word.raw = full;
            word.folded = fold(word.raw);
            if (const auto size = size_word(word.folded); !size.empty() && word.folded.size() < 4) word.folded = size;
            if (!word.folded.empty()) words.push_back(std::move(word));
        }
        after_blank = blank;
        i = here.at();
    }
    return words;
}

std::string phrase(const std::vector<Word>& words, std::size_t first, std::size_t last) {
    std::string out;
    for (std::size_t i = first; i < last; ++i) {
        if (i > first) out += ' ';
        out += words[i].raw;
    }
    return out;
}

}  // namespace standin
