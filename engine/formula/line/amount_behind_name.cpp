#include "formula/line/amount_behind_name.hpp"

#include <utility>

#include "core/names.hpp"
#include "formula/lexer/measures.hpp"
#include "formula/lexer/number_text.hpp"

namespace standin {
namespace {

bool ends_here(Cursor cursor) {
    cursor.space();
    return cursor.done() || cursor.rest().front() == ',';
}

// "Rice a kilo", "padron peppers a dozen", "leeks two": words that end what they stand in. One of something says nothing without a unit.
std::optional<AmountInLine> in_words(std::string_view line, std::size_t at) {
    Cursor cursor(line, at);
    auto amount = amount_at(cursor);
    if (!amount || !ends_here(cursor)) return std::nullopt;
    const bool counts_something = amount->parts.front().unit || amount->parts.front().number.low > 1;
    return counts_something ? std::optional(AmountInLine{std::move(*amount), at, cursor.at()}) : std::nullopt;
}

// "Spring onions x6"
std::optional<AmountInLine> behind_sign(std::string_view line, std::size_t at) {
    Cursor cursor(line, at);
    if (!cursor.eat("x") && !cursor.eat("×")) return std::nullopt;
    if (!number_at(cursor, false) || !ends_here(cursor)) return std::nullopt;
    Cursor number(line, at);
    if (!number.eat("x")) number.eat("×");
    auto amount = amount_at(number);
    return amount ? std::optional(AmountInLine{std::move(*amount), at, number.at()}) : std::nullopt;
}

bool is_measure_alone(std::string_view line, std::size_t at) {
    Cursor cursor(line, at);
    const auto unit = unit_at(cursor);
    return unit && unit->unit->size.mid > 0 && unit->unit->dimension == Dimension::count;
}

bool number_stands_at(std::string_view line, std::size_t at) {
    Cursor cursor(line, at);
    return number_at(cursor, false).has_value();
}

}  // namespace

std::optional<AmountInLine> amount_behind_name(std::string_view line, std::size_t at, bool behind_comma, bool grams_said) {
    if (!behind_comma && !number_stands_at(line, at) && !is_measure_alone(line, at)) {
        auto multiplied = behind_sign(line, at);
        return multiplied ? multiplied : in_words(line, at);
    }
    Cursor cursor(line, at);
    auto amount = amount_at(cursor);
    if (!amount) return std::nullopt;
    std::size_t end = cursor.at();
    cursor.space();
    if (amount->parts.front().unit) return AmountInLine{std::move(*amount), at, end};
    // "onion, 1 medium"
    const auto size = cursor.word();
    if (amount->size = size_word(fold(size)); !amount->size.empty()) cursor.go(end = cursor.at() + size.size());
    const bool chard_400_blanched = grams_said && !behind_comma;
    if (ends_here(cursor) || chard_400_blanched) return AmountInLine{std::move(*amount), at, end};
    return std::nullopt;
}

}  // namespace standin
