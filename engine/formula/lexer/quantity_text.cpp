#include "formula/lexer/quantity_text.hpp"

#include "core/band.hpp"

namespace standin {
namespace {

Band times(const Band& a, const Band& b) { return {a.low * b.low, a.mid * b.mid, a.high * b.high}; }

bool is_weight_or_volume(const Unit& unit) { return unit.dimension == Dimension::mass || unit.dimension == Dimension::volume; }

// "400 g", "14-oz": the content of one container.
std::optional<AmountPart> content_at(Cursor& cursor) {
    const std::size_t before = cursor.at();
    const auto number = number_at(cursor, false);
    const auto unit = number ? unit_at(cursor) : std::nullopt;
    if (unit && is_weight_or_volume(*unit->unit)) return AmountPart{number->band, unit->unit};
    cursor.go(before);
    return std::nullopt;
}

// "2-inch piece", "3 cm long knob": the words behind a length.
void eat_piece(Cursor& cursor) {
    for (int words = 0; words < 2; ++words) {
        const std::size_t before = cursor.at();
        cursor.eat("-");
        if (!cursor.eat_any_word({"long", "piece", "knob", "length", "chunk", "section", "thumb", "hand", "stick"}))
            return cursor.go(before);
    }
}

// "(2-inch)": how long one piece is.
std::optional<AmountPart> length_at(Cursor& cursor) {
    const std::size_t before = cursor.at();
    const auto number = number_at(cursor, false);
    const auto unit = number ? unit_at(cursor) : std::nullopt;
    if (unit && is_length(*unit->unit)) return AmountPart{number->band, unit->unit};
    cursor.go(before);
    return std::nullopt;
}

const Unit* container_at(Cursor& cursor) {
    const std::size_t before = cursor.at();
    cursor.eat("-");
    const auto unit = unit_at(cursor);
    if (unit && is_container(*unit->unit)) return unit->unit;
    cursor.go(before);
    return nullptr;
}

// What follows a count and makes it a count of weights: "x 400 g", "(14 oz) cans", "14-oz cans".
bool multiply_at(Cursor& cursor, AmountText& amount) {
    const std::size_t before = cursor.at();
    AmountPart& part = amount.parts.front();
    const auto take = [&](const AmountPart& content) {
        part = {times(part.number, content.number), content.unit};
        return true;
    };
    cursor.space();
    if (cursor.eat("×") || cursor.eat("*") || cursor.eat_word("x")) {
        if (const auto content = content_at(cursor)) {
            amount.container = container_at(cursor);
            return take(*content);
        }
        if (const auto length = length_at(cursor)) {  // "1 x 5cm piece"
            eat_piece(cursor);
            return take(*length);
        }
    } else if (cursor.eat("(")) {
        const auto content = content_at(cursor);
        cursor.space();
        if (content && cursor.eat(")") && (amount.container = container_at(cursor))) return take(*content);
        const auto length = content ? std::nullopt : length_at(cursor);
        cursor.eat_word("long");
        cursor.space();
        if (length && cursor.eat(")")) {
            eat_piece(cursor);
            return take(*length);
        }
    } else if (const auto content = content_at(cursor)) {
        if ((amount.container = container_at(cursor))) return take(*content);
    }
    cursor.go(before);
    return false;
}

double size_in(const AmountPart& part) { return part.unit->size.mid; }

// "2 lb to 3 lb": the range with its unit said twice.
void range_end_at(Cursor& cursor, AmountPart& part) {
    const std::size_t before = cursor.at();
    cursor.space();
    if (cursor.eat_dash() || cursor.eat_word("to"))
        if (const auto end = content_at(cursor); end && end->unit->dimension == part.unit->dimension) {
            const double high = end->number.high * size_in(*end) / size_in(part);
            if (high >= part.number.low) {
                part.number = {part.number.low, (part.number.low + high) / 2, high};
                return;
            }
        }
    cursor.go(before);
}

// "1 lb 4 oz" and "2 cups 1 tbsp" go on with less than one of what stood before, in the same system; "5 lb 2268 g" and "1 cup 240 ml" tell
// one amount twice.
bool goes_on(const AmountPart& last, const AmountPart& part) {
    return is_metric(*last.unit) == is_metric(*part.unit) && part.number.mid * size_in(part) < size_in(last);
}

// "2 lb 4 oz", "1 cup plus 2 tbsp", "1 cup less 1 tbsp": smaller parts of the same kind.
void further_parts_at(Cursor& cursor, AmountText& amount) {
    for (;;) {
        const std::size_t before = cursor.at();
        const AmountPart& last = amount.parts.back();
        cursor.space();
        const bool less = cursor.eat_any_word({"less", "minus"});
        const bool joined = less || cursor.eat_any_word({"plus", "and"}) || cursor.eat("+") || cursor.eat("&");
        if (!joined && last.unit->dimension == Dimension::mass) cursor.eat(",");
        const auto part = content_at(cursor);
        if (!part || part->unit->dimension != last.unit->dimension || size_in(*part) >= size_in(last) ||
            (!joined && !goes_on(last, *part))) {
            cursor.go(before);
            return;
        }
        amount.parts.push_back({scaled(part->number, less ? -1.0 : 1.0), part->unit});
    }
}

// "a good 2 lb": the article says nothing.
void eat_article(Cursor& cursor) {
    Cursor ahead = cursor;
    if (!ahead.eat_any_word({"a", "an"})) return;
    Cursor fill = ahead;
    if (fill_at(fill)) cursor = ahead;
}

// "an ounce and a half"
void and_a_half_at(Cursor& cursor, double number, AmountPart& part) {
    const std::size_t before = cursor.at();
    if (number > 0 && cursor.eat_word("and") && cursor.eat_any_word({"a", "one"})) {
        const double more = cursor.eat_word("half") ? 0.5 : cursor.eat_word("quarter") ? 0.25 : 0;
        Cursor next = cursor;
        if (more > 0 && !unit_at(next)) {
            part.number = scaled(part.number, (number + more) / number);
            return;
        }
    }
    cursor.go(before);
}

// "a sprig or two", "1 clove or so".
void or_two_at(Cursor& cursor, AmountPart& part) {
    constexpr double so_much = 0.3;  // of it, judgement
    const std::size_t before = cursor.at();
    const Band& one = part.number;
    if (one.low == one.high && cursor.eat_word("or")) {
        if (cursor.eat_word("so")) {
            part.number = {one.mid * (1 - so_much), one.mid, one.mid * (1 + so_much)};
            return;
        }
        cursor.space();
        const bool digit = cursor.digit();
        const auto end = number_at(cursor);
        Cursor next = cursor;
        next.space();
        const bool ends = next.done() || next.rest().front() == ',' || next.rest().front() == ')' || next.eat_word("of");
        if (end && end->band.mid > one.mid && (ends || !digit) && !unit_at(next)) {
            part.number = {one.low, (one.mid + end->band.mid) / 2, end->band.high};
            return;
        }
    }
    cursor.go(before);
}

// "pinch sage", "small bunch sage": a measure that needs no number.
std::optional<AmountText> single_at(Cursor& cursor) {
    const std::size_t before = cursor.at();
    const auto unit = unit_at(cursor);
    if (std::string_view walnut = "walnut"; unit && cursor.at() >= before + walnut.size()) {  // alone it is the nut
        Cursor word(cursor);
        word.go(before);
        if (word.eat_word(walnut)) {
            cursor.go(before);
            return std::nullopt;
        }
    }
    const auto alone = [](std::string_view word) { return word == "bunch" || word == "sprig" || word == "clove" || word == "blade"; };
    if (unit && unit->unit->dimension == Dimension::count && (unit->unit->size.mid > 0 || alone(unit->unit->word))) {
        AmountText amount;
        amount.parts.push_back({unit->factor, unit->unit});
        amount.size = unit->size;
        return amount;
    }
    cursor.go(before);
    return std::nullopt;
}

Whole share_of(Cursor& cursor, bool needs_of = true) {
    const std::size_t before = cursor.at();
    if (cursor.eat_word("by")) cursor.eat_any_word({"weight", "mass"});  // "10 % by weight of meat"
    if (!cursor.eat_any_word({"of", "on"}) && needs_of) {
        cursor.go(before);
        return Whole::unsaid;
    }
    cursor.eat_word("the");
    const bool total = cursor.eat_any_word({"total", "whole", "entire"});
    if (cursor.eat_any_word({"meat", "lean"})) {
        cursor.eat_any_word({"block", "weight", "mass"});
        return Whole::meat;
    }
    if (cursor.eat_any_word({"batch", "mix", "mixture", "mass", "sausage", "farce", "forcemeat", "everything", "total"})) {
        cursor.eat_any_word({"weight", "mass"});
        return Whole::batch;
    }
    if (total) {
        cursor.eat_word("weight");
        return Whole::batch;
    }
    cursor.go(before);
    return Whole::unsaid;
}

}  // namespace

Whole whole_at(Cursor& cursor) { return share_of(cursor); }

std::optional<Per> per_at(Cursor& cursor) {
    const std::size_t before = cursor.at();
    if (cursor.eat("/") || cursor.eat_word("per")) {
        const auto number = number_at(cursor);
        const auto unit = unit_at(cursor);
        if (unit && unit->unit->dimension == Dimension::mass) {
            Per per{(number ? number->band.mid : 1.0) * unit->unit->size.mid, Whole::unsaid};
            per.of = share_of(cursor, false);
            return per;
        }
    }
    cursor.go(before);
    return std::nullopt;
}

std::optional<AmountText> amount_at(Cursor& cursor, bool with_unit) {
    const std::size_t before = cursor.at();
    eat_article(cursor);
    const auto fill = fill_at(cursor);
    auto number = number_at(cursor);
    if (!number) {
        cursor.go(before);
        return with_unit ? single_at(cursor) : std::nullopt;
    }
    if (fill && !with_unit) {
        cursor.go(before);
        return std::nullopt;
    }
    if (fill) number->band = times(number->band, *fill);
    AmountText amount;
    amount.unsure_comma = number->unsure_comma;
    amount.unsure_dot = number->unsure_dot;
    amount.parts.push_back({number->band, nullptr});
    if (!with_unit || multiply_at(cursor, amount)) return amount;
    const auto unit = unit_at(cursor);
    if (!unit) return amount;
    AmountPart& part = amount.parts.front();
    part = {times(number->band, unit->factor), unit->unit};
    amount.filled = fill.has_value() || unit->factor.low < unit->factor.high;
    amount.size = unit->size;
    amount.packed = unit->packed;
    if (is_length(*unit->unit)) eat_piece(cursor);
    if (unit->unit->dimension == Dimension::percent) amount.of = share_of(cursor);
    else if (is_weight_or_volume(*unit->unit)) {
        range_end_at(cursor, part);
        further_parts_at(cursor, amount);
    }
    if (amount.parts.size() == 1 && part.unit->dimension != Dimension::percent) {
        and_a_half_at(cursor, number->band.mid, part);
        or_two_at(cursor, part);
    }
    return amount;
}

}  // namespace standin
