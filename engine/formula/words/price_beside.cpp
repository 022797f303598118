#include "formula/words/price_beside.hpp"

#include <algorithm>
#include <array>
#include <string_view>

#include "core/names.hpp"
#include "formula/lexer/cursor.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/lexer/measures.hpp"
#include "formula/lexer/number_text.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

constexpr std::array<std::string_view, 4> currency_signs{"$", "\u20AC", "\u00A3", "\u00A5"};

bool currency_at(Cursor& cursor, const Knowledge& knowledge) {
    cursor.space();
    if (std::any_of(currency_signs.begin(), currency_signs.end(), [&](auto sign) { return cursor.eat(sign); })) return true;
    const auto word = cursor.word();
    if (word.empty() || !knowledge.in_list(WordList::currency, fold(word))) return false;
    cursor.go(cursor.at() + word.size());
    return true;
}

// "/kg", "a kilo", "per 100 g", "each".
void eat_per(Cursor& cursor) {
    const std::size_t before = cursor.at();
    cursor.space();
    if (cursor.eat_word("each")) return;
    if (!cursor.eat("/") && !cursor.eat_any_word({"a", "per", "the"})) return cursor.go(before);
    number_at(cursor, false);
    if (!unit_at(cursor)) cursor.go(before);
}

// The money at `cursor`, with or without what one gets for it; false where none stands there.
bool money_at(Cursor& cursor, bool currency_said, const Knowledge& knowledge) {
    const std::size_t before = cursor.at();
    currency_said = currency_at(cursor, knowledge) || currency_said;
    cursor.space();
    if (cursor.digit() && number_at(cursor, false)) {
        if (cursor.eat(",")) cursor.eat("-");  // "3,-"
        currency_said = currency_at(cursor, knowledge) || currency_said;
        eat_per(cursor);
        cursor.space();
        const auto next = cursor.word();
        const bool other = cursor.eat("%") || cursor.eat("\u00B0") || next == "C" || next == "F";  // "@ 12 %", "@ 2 C"
        if (currency_said && !other) return true;
    }
    cursor.go(before);
    return false;
}

// "At least", before the amount; before a percentage it tells how fat the meat is.
void take_bound(std::string& line, const Knowledge& knowledge) {
    constexpr std::size_t longest = 3;
    const auto words = words_of(line);
    const auto is_number = [&](std::size_t i) { return Cursor(line, words[i].begin).digit(); };
    for (std::size_t last = 1; last < words.size(); ++last) {
        Cursor cursor(line, words[last].begin);
        if (!cursor.digit() || !number_at(cursor, false)) continue;
        const auto unit = unit_at(cursor);
        if (unit && unit->unit->dimension == Dimension::percent) continue;
        for (std::size_t first = last - std::min(last, longest); first < last; ++first) {
            if (words[last].segment != words[first].segment || (first > 0 && is_number(first - 1))) continue;  // "blanched 3 min, 200 g"
            if (!knowledge.in_list(WordList::at_least, fold(phrase(words, first, last)))) continue;
            std::fill(line.begin() + static_cast<std::ptrdiff_t>(words[first].begin),
                      line.begin() + static_cast<std::ptrdiff_t>(words[last].begin), ' ');
            return;
        }
    }
}

}  // namespace

std::string take_price(std::string& line, const Knowledge& knowledge) {
    for (std::size_t i = 0; i < line.size(); ++i) {
        Cursor cursor(line, i);
        const bool at = cursor.eat("@");
        const bool starts = at || i == 0 || std::string_view(" (,;").find(line[i - 1]) != std::string_view::npos;
        if (!starts || line[i] == ' ' || !money_at(cursor, at, knowledge)) continue;
        std::size_t end = std::min(cursor.at(), line.size());
        while (end > i && line[end - 1] == ' ') --end;
        std::string price = line.substr(i, end - i);
        std::fill(line.begin() + static_cast<std::ptrdiff_t>(i), line.begin() + static_cast<std::ptrdiff_t>(end), ' ');
        return price;
    }
    return {};
}

void take_beside_amount(std::string& line, const Knowledge& knowledge) {
    take_price(line, knowledge);
    take_bound(line, knowledge);
}

}  // namespace standin
