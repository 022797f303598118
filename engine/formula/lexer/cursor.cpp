#include "formula/lexer/cursor.hpp"

#include <array>

#include "core/names.hpp"

namespace standin {
namespace {

constexpr std::array<std::string_view, 6> blanks{" ", "\t", "\r", "\u00A0", "\u2009", "\u202F"};
constexpr std::array<std::string_view, 6> dashes{"-", "\u2010", "\u2011", "\u2012", "\u2013", "\u2212"};

// Letters beyond ASCII start with a lead byte from 0xC3; 0xC2 and 0xE2 lead to signs, 0xC3 0x97 is the multiplication sign.
bool starts_letter(std::string_view text, std::size_t i) {
    const auto c = static_cast<unsigned char>(text[i]);
    if ((c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z')) return true;
    if (c < 0xC3 || c == 0xE2) return false;
    return !(c == 0xC3 && i + 1 < text.size() && static_cast<unsigned char>(text[i + 1]) == 0x97);
}

}  // namespace

void Cursor::space() {
    for (bool moved = true; moved;) {
        moved = false;
        for (const auto blank : blanks) moved = moved || eat(blank);
    }
}

bool Cursor::eat(std::string_view sign) {
    if (rest().substr(0, sign.size()) != sign) return false;
    at_ += sign.size();
    return true;
}

bool Cursor::eat_dash() {
    for (const auto dash : dashes)
        if (eat(dash)) return true;
    return false;
}

std::string_view Cursor::word() const {
    std::size_t end = at_;
    while (end < text_.size() && starts_letter(text_, end)) {
        ++end;
        while (end < text_.size() && (static_cast<unsigned char>(text_[end]) & 0xC0) == 0x80) ++end;
    }
    return text_.substr(at_, end - at_);
}

bool Cursor::eat_word(std::string_view folded) { return eat_any_word({folded}); }

bool Cursor::eat_any_word(std::initializer_list<std::string_view> folded) {
    const std::size_t before = at_;
    space();
    const auto here = word();
    if (!here.empty()) {
        const auto as = fold(here);
        for (const auto wanted : folded)
            if (as == wanted) {
                at_ += here.size();
                return true;
            }
    }
    at_ = before;
    return false;
}

}  // namespace standin
