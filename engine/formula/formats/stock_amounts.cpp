#include "formula/formats/stock_amounts.hpp"

#include <array>
#include <cctype>
#include <cmath>

#include "core/contains.hpp"
#include "core/words.hpp"
#include "formula/formats/stock_words.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/lexer/measures.hpp"
#include "formula/lexer/number_text.hpp"
#include "formula/lexer/quantity_text.hpp"
#include "formula/line/process_text.hpp"

namespace standin {
namespace {

// "250 ml white wine left in the bottle"
void drop_left(std::string& line) {
    constexpr std::array<std::string_view, 4> over{"left", "remaining", "leftover", "over"};
    const auto words = words_of(line);
    for (std::size_t i = words.size(); i-- > 1;) {
        if (!contains(over, std::string_view(words[i].folded))) continue;
        const bool in_it = i + 1 < words.size() && words[i + 1].folded == "in";
        if (in_it || i + 1 == words.size()) return drop_left(line = line.substr(0, words[i - 1].end));
    }
}

bool is_number_word(const std::string& folded) {
    constexpr std::array<std::string_view, 9> words{"a", "an", "one", "two", "three", "four", "half", "quarter", "another"};
    return contains(words, std::string_view(folded));
}

// Where an amount of things starts that runs to the end of the line; zero where none does.
std::size_t trailing_amount(const std::string& line) {
    const auto words = words_of(line);
    for (std::size_t i = 1; i < words.size(); ++i) {
        const bool digit = std::isdigit(static_cast<unsigned char>(words[i].raw.front())) != 0;
        const bool behind_comma = words[i].segment != words[i - 1].segment;
        if (!is_number_word(words[i].folded) && !(digit && behind_comma)) continue;
        Cursor cursor(line, words[i].begin);
        const auto amount = amount_at(cursor);
        cursor.space();
        const Unit* unit = amount ? amount->parts.front().unit : nullptr;
        if (unit && unit->dimension == Dimension::count && cursor.done()) return words[i].begin;
    }
    return 0;
}

}  // namespace

std::string with_amount_first(std::string_view written) {
    std::string line(written);
    for (const std::string_view dash : {"\u2013", "\u2014"}) replace_all(line, dash, "-");
    replace_all(line, "\u2019", "'");
    for (const std::string_view about : {"(about ", "(approx ", "(approx. ", "(ca. ", "(ca ", "(roughly "}) replace_all(line, about, "(");
    drop_left(line);
    const std::size_t at = trailing_amount(line);
    if (at > 0) return line.substr(at) + " " + std::string(bare(std::string_view(line).substr(0, at)));
    Cursor cursor(line);
    const bool counted = number_at(cursor).has_value();
    cursor.go(0);
    const auto unit = counted ? std::nullopt : unit_at(cursor);
    return unit && unit->unit->dimension == Dimension::count && cursor.eat_word("of") ? "1 " + line : line;
}

std::optional<SizedLine> by_usual_size(std::string_view line, const Knowledge& knowledge) {
    Cursor cursor(line);
    const auto amount = amount_at(cursor);
    const Unit* unit = amount ? amount->parts.front().unit : nullptr;
    if (!unit || !is_container(*unit)) return std::nullopt;
    cursor.eat_word("of");
    const std::string_view name = bare(line.substr(cursor.at()));
    if (name.empty()) return std::nullopt;
    const double grams = amount->parts.front().number.mid * knowledge.parameter("reading.stock." + std::string(unit->word)).mid;
    const std::string weight = plain_number(std::round(grams)) + " g";
    Reason told = reason_about(ReasonKind::taken_as_amount, std::string(line));
    told.note = weight;
    return SizedLine{weight + " " + std::string(name), std::move(told)};
}

}  // namespace standin
