#include "formula/lexer/number_text.hpp"

#include <algorithm>
#include <array>
#include <string>

#include "core/names.hpp"

namespace standin {
namespace {

struct Named {
    std::string_view text;
    double value;
};
constexpr std::array vulgar{FractionSign{"½", "1/2", 1.0 / 2}, FractionSign{"¼", "1/4", 1.0 / 4}, FractionSign{"¾", "3/4", 3.0 / 4},
                            FractionSign{"⅓", "1/3", 1.0 / 3}, FractionSign{"⅔", "2/3", 2.0 / 3}, FractionSign{"⅕", "1/5", 1.0 / 5},
                            FractionSign{"⅖", "2/5", 2.0 / 5}, FractionSign{"⅗", "3/5", 3.0 / 5}, FractionSign{"⅘", "4/5", 4.0 / 5},
                            FractionSign{"⅙", "1/6", 1.0 / 6}, FractionSign{"⅚", "5/6", 5.0 / 6}, FractionSign{"⅛", "1/8", 1.0 / 8},
                            FractionSign{"⅜", "3/8", 3.0 / 8}, FractionSign{"⅝", "5/8", 5.0 / 8}, FractionSign{"⅞", "7/8", 7.0 / 8}};
constexpr std::array spelled{Named{"a", 1},    Named{"an", 1},   Named{"one", 1},     Named{"two", 2},     Named{"three", 3},
                             Named{"four", 4}, Named{"five", 5}, Named{"six", 6},     Named{"seven", 7},   Named{"eight", 8},
                             Named{"nine", 9}, Named{"ten", 10}, Named{"eleven", 11}, Named{"twelve", 12}, Named{"twenty", 20}};
constexpr std::array multiples{Named{"half", 0.5}, Named{"quarter", 0.25}, Named{"third", 1.0 / 3}, Named{"couple", 2}, Named{"dozen", 12}};
constexpr double about_share = 0.10;  // judgement

std::optional<double> vulgar_fraction(Cursor& cursor) {
    const auto* sign = fraction_sign(cursor.rest());
    if (!sign) return std::nullopt;
    cursor.eat(sign->sign);
    return sign->value;
}

struct Digits {
    double value = 0, scale = 1;
    std::size_t count = 0;
};

Digits digits(Cursor& cursor) {
    Digits read;
    for (; cursor.digit() && read.count < 15; ++read.count) {
        read.value = read.value * 10 + (cursor.rest().front() - '0');
        read.scale *= 10;
        cursor.go(cursor.at() + 1);
    }
    return read;
}

// "3/4" or a sign for it.
std::optional<double> fraction(Cursor& cursor) {
    if (auto value = vulgar_fraction(cursor)) return value;
    const std::size_t before = cursor.at();
    const auto over = digits(cursor);
    if (over.count > 0 && (cursor.eat("/") || cursor.eat("⁄"))) {
        const auto under = digits(cursor);
        if (under.count > 0 && under.value > 0) return over.value / under.value;
    }
    cursor.go(before);
    return std::nullopt;
}

// The fraction of a mixed number, behind a blank, a hyphen, "and" or nothing.
double mixed_fraction(Cursor& cursor) {
    const std::size_t before = cursor.at();
    cursor.space();
    if (!cursor.eat_dash() && !cursor.eat_word("and")) cursor.eat("&");
    cursor.space();
    const auto part = fraction(cursor);
    if (part && *part < 1) return *part;
    cursor.go(before);
    return 0;
}

// Digits after a comma: "1,5" and "0,250" are decimals, "2,400" may be thousands.
void comma_digits(Cursor& cursor, double whole, std::size_t whole_digits, double& value, bool& unsure) {
    const std::size_t before = cursor.at();
    if (!cursor.eat(",")) return;
    const auto behind = digits(cursor);
    if (behind.count == 0) {
        cursor.go(before);
    } else if (behind.count == 3 && whole > 0 && whole_digits <= 3) {
        value = whole * 1000 + behind.value;
        unsure = true;
        if (cursor.eat(",")) {
            value = value * 1000 + digits(cursor).value;
            unsure = false;
        }
    } else {
        value = whole + behind.value / behind.scale;
    }
}

std::optional<double> digit_value(Cursor& cursor, bool& unsure, bool& unsure_dot) {
    if (auto value = fraction(cursor)) return value;
    const std::size_t before = cursor.at();
    const auto whole = digits(cursor);
    double value = whole.value;
    const std::size_t after_whole = cursor.at();
    if (cursor.eat(".")) {
        const auto behind = digits(cursor);
        unsure_dot = behind.count == 3 && whole.value > 0 && whole.count <= 3;
        if (behind.count > 0) return value + behind.value / behind.scale;
        cursor.go(after_whole);
    }
    if (whole.count == 0) {
        cursor.go(before);
        return std::nullopt;
    }
    comma_digits(cursor, whole.value, whole.count, value, unsure);
    return cursor.at() == after_whole ? value + mixed_fraction(cursor) : value;
}

std::optional<double> word_value(Cursor& cursor) {
    for (const auto& [text, value] : spelled)
        if (cursor.eat_word(text)) return value;
    return std::nullopt;
}

// "half a dozen", "three quarters", "2 dozen", "one and a half".
std::optional<double> wordy_value(Cursor& cursor, std::optional<double> first) {
    for (bool more = true; more;) {
        more = false;
        if (Cursor joined = cursor; first && joined.eat_dash())  // "one-quarter"
            for (const auto& [text, factor] : multiples)
                if (factor < 1 && fold(joined.word()) == text) cursor = joined;
        for (const auto& [text, factor] : multiples)
            if (cursor.eat_word(text)) {
                first = first.value_or(1) * factor;
                more = true;
                const std::size_t here = cursor.at();
                cursor.eat_word("of");
                if (!cursor.eat_any_word({"a", "an", "the"}) && factor < 1) cursor.go(here);
            }
    }
    if (!first) return first;
    const std::size_t before = cursor.at();
    if (cursor.eat_word("and") && cursor.eat_any_word({"a", "one"})) {
        if (cursor.eat_word("half")) return *first + 0.5;
        if (cursor.eat_word("quarter")) return *first + 0.25;
    }
    cursor.go(before);
    return first;
}

std::optional<double> value_at(Cursor& cursor, bool words, bool& unsure, bool& unsure_dot) {
    cursor.space();
    auto value = digit_value(cursor, unsure, unsure_dot);
    if (!words) return value;
    if (value && *value > 0 && *value < 1) {  // "1/2 a lemon", "3/4 of a cup"
        const std::size_t before = cursor.at();
        cursor.eat_word("of");
        if (!cursor.eat_any_word({"a", "an"})) cursor.go(before);
    }
    if (!value) value = word_value(cursor);
    return wordy_value(cursor, value);
}

bool joins_range(Cursor& cursor, bool between) {
    if (between) return cursor.eat_word("and");
    cursor.space();
    return cursor.eat_dash() || cursor.eat_any_word({"to", "or"});
}

std::optional<double> minutes_a_unit(Cursor& cursor) {
    cursor.space();
    cursor.eat("-");
    if (cursor.eat_any_word({"min", "minute", "m"})) return 1.0;
    if (cursor.eat_any_word({"h", "hr", "hour"})) return 60.0;
    if (cursor.eat_any_word({"s", "sec", "second"})) return 1.0 / 60;
    if (cursor.eat_any_word({"d", "day"})) return 1440.0;
    return std::nullopt;
}

}  // namespace

const FractionSign* fraction_sign(std::string_view text) {
    const auto found = std::find_if(vulgar.begin(), vulgar.end(), [&](const FractionSign& one) { return text.starts_with(one.sign); });
    return found == vulgar.end() ? nullptr : &*found;
}

bool eat_about(Cursor& cursor) {
    if (!cursor.eat_any_word({"about", "approx", "approximately", "around", "roughly", "ca", "circa"})) return false;
    cursor.eat(".");
    return true;
}

std::optional<Number> number_at(Cursor& cursor, bool words) {
    const std::size_t before = cursor.at();
    cursor.space();
    bool about = cursor.eat("~") || cursor.eat("≈");
    while (eat_about(cursor)) about = true;
    const bool between = cursor.eat_word("between");
    Number number;
    cursor.space();
    const bool negative = cursor.eat_dash() && cursor.digit();
    const auto first = value_at(cursor, words && !negative, number.unsure_comma, number.unsure_dot);
    if (!first) {
        cursor.go(before);
        return std::nullopt;
    }
    const double low = negative ? -*first : *first;
    number.band = {low, low, low};
    const std::size_t after = cursor.at();
    bool unsure = false;
    const auto second = joins_range(cursor, between) ? value_at(cursor, words, unsure, number.unsure_dot) : std::nullopt;
    if (second && *second >= low) number.band = {low, (low + *second) / 2, *second};
    else cursor.go(after);
    if (about && number.band.low == number.band.high) number.band = {low * (1 - about_share), low, low * (1 + about_share)};
    return number;
}

std::optional<double> minutes_at(Cursor& cursor) {
    const std::size_t before = cursor.at();
    double total = 0;
    std::size_t end = before;
    for (;;) {
        const auto number = number_at(cursor, false);
        const auto unit = number ? minutes_a_unit(cursor) : std::nullopt;
        if (!unit) break;
        total += number->band.mid * *unit;
        cursor.eat(".");
        end = cursor.at();
        cursor.eat_word("and");
    }
    cursor.go(end);
    return end == before ? std::nullopt : std::optional<double>(total);
}

}  // namespace standin
