#include "formula/line_notes.hpp"

#include <algorithm>

#include "base/names.hpp"
#include "formula/line_words.hpp"
#include "formula/prepared_text.hpp"
#include "formula/quantity_text.hpp"

namespace standin {
namespace {

bool take_mark(std::string_view folded, LineNotes& notes) {
    if (folded == "keep" || folded == "kept" || folded == "fixed") notes.keep = true;
    else if (folded == "weighed prepared" || folded == "weighed after") notes.weighed_after = true;
    else if (folded == "weighed first" || folded == "weighed before") notes.weighed_after = false;
    else return false;
    return true;
}

std::optional<Band> mass_at(Cursor& cursor) {
    const auto amount = amount_at(cursor);
    if (!amount || amount->of != Whole::none || amount->unsure_comma) return std::nullopt;
    Band grams;
    for (const auto& part : amount->parts) {
        if (!part.unit || part.unit->dimension != Dimension::mass) return std::nullopt;
        grams.low += part.number.low * part.unit->size.mid;
        grams.mid += part.number.mid * part.unit->size.mid;
        grams.high += part.number.high * part.unit->size.mid;
    }
    return grams;
}

bool take_count(std::string_view inside, LineNotes& notes) {
    Cursor cursor(inside);
    if (inside.find('/') != std::string_view::npos) return false;  // "80/20" tells lean and fat
    const auto number = number_at(cursor, false);
    cursor.space();
    if (!number || !cursor.done()) return false;
    notes.count = number->band.mid;
    return true;
}

bool tells_fat(const std::vector<Word>& words) {
    for (std::size_t i = 0; i < words.size(); ++i)
        if (lean_share(words, i)) return true;
    return false;
}

// A preparation, a duration, or only words that may stand beside a name.
bool belongs_to_words(std::string_view inside, const Knowledge& knowledge) {
    Cursor cursor(inside);
    if (minutes_at(cursor)) return true;
    if (tells_fat(words_of(inside))) return true;
    const auto words = words_of(inside);
    if (words.empty()) return false;
    if (preparation_end(words, 0, words.size(), knowledge) > 0) return true;
    for (std::size_t i = 0; i < words.size();) {
        const std::size_t count = std::max(cut_word(words, i), passable(words, i));
        if (count == 0) return false;
        i += count;
    }
    return true;
}

void read_bracket(std::string& line, std::size_t open, std::size_t close, const Knowledge& knowledge, LineNotes& notes) {
    const std::string inside = line.substr(open + 1, close - open - 1);
    const auto blank = [&] {
        std::fill(line.begin() + static_cast<std::ptrdiff_t>(open), line.begin() + static_cast<std::ptrdiff_t>(close) + 1, ' ');
    };
    Cursor cursor(inside);
    if (whole_at(cursor) != Whole::unsaid) {
        line[open] = line[close] = ' ';
    } else if (take_mark(fold(inside), notes) || take_weight(inside, notes) || take_count(inside, notes)) {
        blank();
    } else if (line[open] == '(' && belongs_to_words(inside, knowledge)) {
        line[open] = minutes_at(cursor) ? ' ' : ',';
        line[close] = ',';
    } else {
        if (!fold(inside).empty()) notes.passed.push_back(inside);
        blank();
    }
}

// "2 (14 oz) cans" is an amount and is read as one.
bool inside_amount(std::string_view line, std::size_t open, std::size_t close) {
    Cursor start(line);
    const auto amount = amount_at(start);
    return amount && open < start.at() && close < start.at();
}

}  // namespace

bool take_weight(std::string_view inside, LineNotes& notes) {
    Cursor cursor(inside);
    Cursor ahead = cursor;
    const bool about = ahead.eat("~") || ahead.eat_any_word({"about", "approx", "approximately", "around", "roughly", "ca", "circa"});
    const auto first = mass_at(cursor);
    if (!first) return false;
    Band grams = *first;
    const bool range_only = !about && first->low < first->high;
    if (!range_only && cursor.eat(",")) {
        const auto range = mass_at(cursor);
        if (!range || range->low > grams.mid || range->high < grams.mid) return false;
        grams = {range->low, grams.mid, range->high};
    }
    const bool each = cursor.eat_word("each");
    if (!each) {
        cursor.eat_word("in");
        cursor.eat_any_word({"total", "all"});
    }
    cursor.space();
    if (!cursor.done()) return false;
    notes.grams = grams;
    notes.range_only = range_only;
    notes.about = about;
    notes.each = each;
    return true;
}

LineNotes take_notes(std::string& line, const Knowledge& knowledge) {
    LineNotes notes;
    for (std::size_t open = line.find_first_of("(["); open != std::string::npos; open = line.find_first_of("([", open + 1)) {
        const std::size_t close = line.find(line[open] == '(' ? ')' : ']', open);
        if (close == std::string::npos) break;
        if (!inside_amount(line, open, close)) read_bracket(line, open, close, knowledge, notes);
    }
    return notes;
}

}  // namespace standin
