#include "formula/food/line_notes.hpp"

#include <algorithm>
#include <cctype>

#include "core/names.hpp"
#include "formula/food/prepared_text.hpp"
#include "formula/lexer/digits.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/lexer/quantity_text.hpp"
#include "formula/words/lean_share.hpp"
#include "formula/words/line_asides.hpp"
#include "formula/words/passed_over.hpp"
#include "knowledge/records/word_list.hpp"

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

// "1 glass (125 ml)"
bool take_volume(std::string_view inside, LineNotes& notes) {
    Cursor cursor(inside);
    cursor.eat("~");
    eat_about(cursor);
    const auto amount = amount_at(cursor);
    cursor.space();
    const Unit* unit = amount ? amount->parts.front().unit : nullptr;
    if (!unit || unit->dimension != Dimension::volume || !cursor.done() || !notes.volume.empty()) return false;
    if (!is_metric(*unit)) notes.in_cups = inside;
    notes.volume = amount->parts;
    return true;
}

bool names_food(const std::vector<Word>& words, std::size_t from, std::size_t to, const Knowledge& knowledge) {
    for (; from < to; ++from)
        for (std::size_t end = std::min(to, from + 4); end > from; --end)
            if (knowledge.ingredient_named(phrase(words, from, end))) return true;
    return false;
}

struct Clause {
    std::size_t first = 0, last = 0;  // words
    std::size_t known = 0;            // the first word that is not understood
    bool tells = false;               // a preparation, a cut or a share of fat; else only words that say nothing
};

Clause clause_at(const std::vector<Word>& words, std::size_t first, const Knowledge& knowledge) {
    Clause clause{first, first, first, false};
    while (clause.last < words.size() && words[clause.last].segment == words[first].segment) ++clause.last;
    while (clause.known < clause.last) {
        const std::size_t at = clause.known;
        std::size_t end = std::max(preparation_end(words, at, clause.last, knowledge), at + cut_word(words, at, knowledge));
        if (const auto share = lean_share(words, at, knowledge)) end = std::max(end, share->last);
        end = std::max(end, at + part_only(words, at, knowledge));
        clause.tells = clause.tells || end > at;
        if (words[at].folded == "or" && at > first) end = std::max(end, at + 1);
        end = std::max(end, at + passable(words, at, knowledge));
        if (end == at) break;
        clause.known = std::min(end, clause.last);
    }
    if (clause.known < clause.last && clause.known > first && words[clause.known - 1].folded == "or") --clause.known;
    return clause;
}

// Leaves in `inside` what belongs to the words of the line and passes over what a bracket tells beside that: of "chilled, such as a dry
// one" "chilled". False when nothing in it belongs there.
bool keep_what_belongs(std::string& inside, const Knowledge& knowledge, LineNotes& notes) {
    Cursor cursor(inside);
    if (minutes_at(cursor)) return true;
    const auto words = words_of(inside);
    bool any = false, all_plain = !words.empty();
    std::vector<std::pair<std::size_t, std::size_t>> rest;  // words
    for (std::size_t i = 0; i < words.size();) {
        const Clause clause = clause_at(words, i, knowledge);
        // "bone in", "lean", "smoked for depth": not to be passed over
        const bool alone = (clause.known == i && ((changes_food(words[i].folded, knowledge) && clause.last - i < 3) ||
                                                  names_a_kind(words[i].folded, knowledge))) ||
                           tells_of_absence(words, i, clause.last);
        const bool weight = clause.tells && clause.known + 1 == clause.last && words[clause.known].folded == "weight";
        if (weight) notes.weighed_after = true;
        const bool other = clause.tells && !weight && names_food(words, clause.known, clause.last, knowledge);
        any = any || clause.tells || alone;
        all_plain = all_plain && clause.known == clause.last;
        if (!alone && !other && clause.known < clause.last) rest.emplace_back(clause.tells ? clause.known : i, clause.last);
        i = clause.last;
    }
    if (!any && !all_plain) return false;
    for (const auto& [from, to] : rest) {
        const auto begin = inside.begin() + static_cast<std::ptrdiff_t>(words[from].begin);
        const auto end = inside.begin() + static_cast<std::ptrdiff_t>(words[to - 1].end);
        if (phrase(words, from, to) != "weight") notes.passed.emplace_back(begin, end);
        std::fill(begin, end, ' ');
    }
    return true;
}

// "350 g, 200 g drained", "drained weight 240 g": that of the food counts.
bool take_drained(std::string_view inside, LineNotes& notes) {
    const auto words = words_of(inside);
    const auto drained = std::find_if(words.begin(), words.end(), [](const Word& word) { return word.folded == "drained"; });
    if (drained == words.end() || !has_digit(inside)) return false;
    const auto weight_from = [&](std::size_t at) {
        Cursor cursor(inside, at);
        const auto grams = mass_at(cursor);
        if (grams) notes.grams = grams, notes.drained = true;
        return grams.has_value();
    };
    for (auto word = drained + 1; word != words.end(); ++word)
        if (std::isdigit(static_cast<unsigned char>(word->raw.front())) != 0) return weight_from(word->begin);
    for (auto word = drained; word != words.begin(); --word)  // the nearest before it
        if (std::isdigit(static_cast<unsigned char>((word - 1)->raw.front())) != 0) return weight_from((word - 1)->begin);
    return false;
}

// "Flaky, about 27 g": words that say nothing of how it is weighed, then a weight.
void take_weight_behind_words(std::string& inside, const Knowledge& knowledge, LineNotes& notes) {
    const auto stop = inside.find_last_of(",;");
    if (stop == std::string::npos || notes.grams) return;
    const std::string before = inside.substr(0, stop);
    const auto words = words_of(before);
    const bool plain = !has_digit(before) && std::none_of(words.begin(), words.end(), [&](const Word& word) {
        return changes_food(word.folded, knowledge) || knowledge.preparation_named(word.raw) ||
               knowledge.in_list(WordList::weighed_when_done, word.folded) ||
               knowledge.in_list(WordList::weighed_when_trimmed, word.folded);
    });
    const auto first = inside.find_first_not_of(' ', stop + 1);
    if (plain && first != std::string::npos && take_weight(std::string_view(inside).substr(first), knowledge, notes))
        std::fill(inside.begin() + static_cast<std::ptrdiff_t>(stop), inside.end(), ' ');
}

void read_bracket(std::string& line, std::size_t open, std::size_t close, const Knowledge& knowledge, LineNotes& notes) {
    std::string inside = line.substr(open + 1, close - open - 1);
    const auto blank = [&] {
        std::fill(line.begin() + static_cast<std::ptrdiff_t>(open), line.begin() + static_cast<std::ptrdiff_t>(close) + 1, ' ');
    };
    if (take_drained(inside, notes)) return blank();
    // "907 g; boneless and skinless": a weight, then words.
    if (const auto stop = inside.find_first_of(";,"); stop != std::string::npos && !notes.grams) {
        LineNotes whole = notes;
        if (!take_weight(inside, knowledge, whole) && take_weight(std::string_view(inside).substr(0, stop), knowledge, notes))
            std::fill(inside.begin(), inside.begin() + static_cast<std::ptrdiff_t>(stop) + 1, ' ');
    }
    take_weight_behind_words(inside, knowledge, notes);
    Cursor cursor(inside);
    if (whole_at(cursor) != Whole::unsaid) {
        line[open] = line[close] = ' ';
    } else if (take_mark(fold(inside), notes) || take_weight(inside, knowledge, notes) || take_count(inside, notes) ||
               take_volume(inside, notes)) {
        blank();
    } else if (line[open] == '(' && keep_what_belongs(inside, knowledge, notes)) {
        line.replace(open + 1, inside.size(), inside);
        line[open] = minutes_at(cursor) ? ' ' : ',';
        line[close] = ',';
    } else {
        inside.erase(inside.find_last_not_of(' ') + 1);
        if (!fold(inside).empty()) notes.passed.push_back(inside);
        blank();
    }
}

// "180 g cleaned", "8 oz after cleaning", "200 g trimmed": in what state it is weighed. The inner value: after all that is done to it,
// where that is said. Nothing where the words say something else.
std::optional<std::optional<bool>> state_weighed(std::string_view said, const Knowledge& knowledge) {
    std::optional<bool> after;
    bool told = false;
    for (const auto& word : words_of(said)) {
        if (knowledge.in_list(WordList::weighed_when_done, word.folded)) after = true, told = true;
        else if (knowledge.in_list(WordList::weighed_when_trimmed, word.folded)) told = true;
        else if (!knowledge.in_list(WordList::beside_a_state, word.folded)) return std::nullopt;
    }
    if (!told) return std::nullopt;
    return after;
}

// "2 (14 oz) cans" is an amount and is read as one.
bool inside_amount(std::string_view line, std::size_t open, std::size_t close) {
    Cursor start(line);
    const auto amount = amount_at(start);
    return amount && open < start.at() && close < start.at();
}

}  // namespace

bool take_weight(std::string_view inside, const Knowledge& knowledge, LineNotes& notes) {
    Cursor cursor(inside);
    Cursor ahead = cursor;
    const bool about = ahead.eat("~") || eat_about(ahead);
    const auto first = mass_at(cursor);
    if (!first) return false;
    Band grams = *first;
    const bool range_only = !about && first->low < first->high;
    cursor.space();
    if (!range_only && cursor.eat(",")) {
        const auto range = mass_at(cursor);
        if (!range || range->low > grams.mid || range->high < grams.mid) return false;
        grams = {range->low, grams.mid, range->high};
    } else if (!range_only && (cursor.eat("/") || cursor.eat("|"))) {  // "7 oz / 200 g"
        const auto again = mass_at(cursor);
        if (!again) return false;
        grams = {std::min(grams.low, again->low), grams.mid, std::max(grams.high, again->high)};
    }
    const bool each = cursor.eat_word("each");
    if (!each) {
        cursor.eat_word("in");
        cursor.eat_any_word({"total", "all"});
        cursor.eat_word("of");
        cursor.eat_any_word({"meat", "flesh"});
    }
    cursor.space();
    const auto state = cursor.done() ? std::optional(std::optional<bool>()) : state_weighed(cursor.rest(), knowledge);
    if (!state) return false;
    if (*state) notes.weighed_after = *state;
    notes.grams = grams;
    notes.range_only = range_only;
    notes.about = about;
    notes.each = each;
    return true;
}

void bracket_drained(std::string& line) {
    const auto words = words_of(line);
    for (std::size_t i = 2; i < words.size(); ++i) {
        if (words[i].folded != "drained" || words[i].segment == words[i - 1].segment) continue;
        std::size_t at = i + 1;
        while (at < words.size() && (words[at].folded == "weight" || words[at].folded == "to" || words[at].folded == "about")) ++at;
        const auto comma = line.rfind(',', words[i].begin);
        if (at == words.size() || comma == std::string::npos || !has_digit(line.substr(0, comma))) return;
        Cursor cursor(line, words[at].begin);
        if (!mass_at(cursor)) return;
        const bool in_bracket = line.rfind('(', comma) != std::string::npos && line.rfind(')', comma) == std::string::npos;
        if (in_bracket) return;
        line.insert(cursor.at(), ")");
        line[comma] = ' ';
        line.insert(words[i].begin, "(");
        return;
    }
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
