#include "formula/food/line_phrases.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <string_view>
#include <utility>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "formula/food/free_of.hpp"
#include "formula/food/kind_in_brackets.hpp"
#include "formula/food/part_of_food.hpp"
#include "formula/food/style_of_place.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/lexer/measures.hpp"
#include "formula/lexer/number_text.hpp"
#include "formula/lexer/spaces.hpp"
#include "formula/words/passed_over.hpp"
#include "formula/words/thaw_day.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

constexpr std::array<std::string_view, 14> bullets{"*", "•", "·", "‣", "▪", "●", "◦", "□", "☐", "▢", "✓", "+", "–", "—"};

void blank_all(std::string& line, std::string_view what) {
    for (std::size_t i = line.find(what); i != std::string::npos; i = line.find(what, i)) blank(line, i, i + what.size());
}

// "1. ", "12) " or "(3) " before something else; a bare "2." stays an amount.
std::size_t past_numbering(const std::string& line, std::size_t at) {
    Cursor cursor(line, at);
    const bool bracket = cursor.eat("(");
    std::size_t count = 0;
    for (; cursor.digit() && count < 3; ++count) cursor.go(cursor.at() + 1);
    if (count == 0) return at;
    const bool closed = cursor.eat(")");
    if (!closed && (bracket || !cursor.eat("."))) return at;
    const std::size_t behind = cursor.at();
    cursor.space();
    if (cursor.at() == behind || cursor.done()) return at;
    // "2. eggs" counts eggs; "2. 4 eggs" and "2. salt, 18 g" are numbered.
    const bool counted = line.find_first_of("0123456789", cursor.at()) != std::string::npos || number_at(cursor);
    cursor.go(behind);
    cursor.space();
    return counted ? cursor.at() : at;
}

// "chilled to 1 °C", "at 35°F": how cold something goes in is the process, not the amount. Without its sign a degree needs "to" or "at".
void take_temperatures(std::string& line) {
    const auto words = words_of(line);
    for (std::size_t i = 1; i < words.size(); ++i) {
        Cursor cursor(line, words[i].begin);
        if (!cursor.digit() || !number_at(cursor, false)) continue;
        cursor.space();
        const bool sign = cursor.eat("°") || cursor.eat("º") || cursor.eat_any_word({"degree", "deg"});
        cursor.space();
        const bool scale = cursor.word() == "C" || cursor.word() == "F";
        const auto& before = words[i - 1].folded;
        const bool led = before == "to" || before == "at" || before == "below" || before == "under";
        const bool range = i > 1 && std::isdigit(static_cast<unsigned char>(words[i - 2].raw.front())) != 0;  // "1 to 2 C milk" are cups
        if (!(sign && (scale || led)) && !(scale && led && !range)) continue;
        if (scale) cursor.go(cursor.at() + 1);
        std::size_t from = i;
        while (from > 1 && (words[from - 1].folded == "to" || words[from - 1].folded == "at" || words[from - 1].folded == "about" ||
                            words[from - 1].folded == "below" || words[from - 1].folded == "under"))
            --from;
        blank(line, words[from].begin, cursor.at());
    }
}

// "70:30" as "70/30": lean to fat, where both make a hundred.
void write_lean_to_fat(std::string& line) {
    const auto digit = [&](std::size_t i) { return i < line.size() && line[i] >= '0' && line[i] <= '9'; };
    for (std::size_t i = line.find(':'); i != std::string::npos; i = line.find(':', i + 1)) {
        if (i < 2 || !digit(i - 1) || !digit(i - 2) || !digit(i + 1) || !digit(i + 2) || digit(i + 3) || (i > 2 && digit(i - 3))) continue;
        if (std::stoi(line.substr(i - 2, 2)) + std::stoi(line.substr(i + 1, 2)) == 100) line[i] = '/';
    }
}

// "70% lean / 30% fat" as "70% lean", "lean 90%" as "90% lean", "72VL" as "72% lean": both say the same.
void write_lean_first(std::string& line) {
    const auto digit = [&](std::size_t i) { return i < line.size() && line[i] >= '0' && line[i] <= '9'; };
    for (std::size_t i = line.find("D "); i != std::string::npos; i = line.find("D ", i + 1))  // "4D 70VL": a code of the cut
        if (i >= 2 && digit(i - 1) && line[i - 2] == ' ' && digit(i + 2) && digit(i + 3) && line.compare(i + 4, 2, "VL") == 0)
            line.replace(i - 1, 2, "  ");
    for (std::size_t i = 0; i + 1 < line.size(); ++i) {  // visual lean behind the meat: "80VL", "80 vl", "80 % VL"
        const bool visual = (line[i] == 'V' || line[i] == 'v') && (line[i + 1] == 'L' || line[i + 1] == 'l');
        const auto behind = line.find_first_not_of(' ', i + 2);
        if (!visual || (behind != std::string::npos && line[behind] != ',' && line[behind] != ')' && !digit(behind))) continue;
        std::size_t figure = i;
        while (figure > 0 && (line[figure - 1] == ' ' || line[figure - 1] == '%')) --figure;
        if (figure < 2 || !digit(figure - 1) || !digit(figure - 2) || (figure > 2 && digit(figure - 3))) continue;
        line.replace(figure, i + 2 - figure, "% lean");
    }
    for (std::size_t i = line.find("lean "); i != std::string::npos; i = line.find("lean ", i + 1)) {
        if (!digit(i + 5) || !digit(i + 6) || i + 7 >= line.size() || line[i + 7] != '%') continue;
        const std::string share = line.substr(i + 5, 3);
        line.replace(i, 8, share + " lean");
    }
    for (std::size_t i = line.find("% lean"); i != std::string::npos; i = line.find("% lean", i + 1)) {
        std::size_t at = i + 6;
        while (at < line.size() && std::string_view(" /,&").find(line[at]) != std::string_view::npos) ++at;
        if (at == i + 6 || i < 2 || !digit(i - 1) || !digit(i - 2) || !digit(at) || !digit(at + 1)) continue;
        if (line.compare(at + 2, 5, "% fat") != 0 || std::stoi(line.substr(i - 2, 2)) + std::stoi(line.substr(at, 2)) != 100) continue;
        line.erase(i + 6, at + 7 - (i + 6));
    }
}

// "Cream, 35%  100 ml": so fat it is.
void write_fat_of_cream(std::string& line, const Knowledge& knowledge) {
    const auto words = words_of(line);
    const bool any =
        std::any_of(words.begin(), words.end(), [&](const Word& word) { return knowledge.in_list(WordList::milky_word, word.folded); });
    const auto at = line.find('%');
    if (!any || at == std::string::npos || at == 0 || line[at - 1] < '0' || line[at - 1] > '9') return;
    const auto next = line.find_first_not_of(' ', at + 1);
    if (next != std::string::npos && std::isalpha(static_cast<unsigned char>(line[next])) != 0) return;
    for (std::size_t i = 0; i < words.size(); ++i) {
        Cursor cursor(line, words[i].begin);
        if (!cursor.digit() || !number_at(cursor, false)) continue;
        const auto unit = unit_at(cursor);
        if (!unit || (unit->unit->dimension != Dimension::mass && unit->unit->dimension != Dimension::volume)) continue;
        line.insert(at + 1, " fat,");
        return;
    }
}

// `1/4"` as "1/4 inch".
void write_inches(std::string& line) {
    for (std::size_t i = line.find('"'); i != std::string::npos; i = line.find('"', i + 1))
        if (i > 0 && line[i - 1] >= '0' && line[i - 1] <= '9' && (i + 1 == line.size() || line[i + 1] == ' ' || line[i + 1] == ','))
            line.replace(i, 1, " inch");
}

// "1 Tbsp (Australian, 20 ml) soy sauce" as "1 Australian Tbsp (20 ml) soy sauce".
void write_country_of_measure(std::string& line, const Knowledge& knowledge) {
    const auto open = line.find('('), close = line.find(')', open);
    if (close == std::string::npos) return;
    const auto words = words_of(line);
    const auto behind = std::find_if(words.begin(), words.end(), [&](const Word& word) { return word.begin > open; });
    if (behind == words.begin() || behind == words.end() || behind->end > close) return;
    const auto& measure = *(behind - 1);
    if (!knowledge.in_list(WordList::country_of_measure, behind->folded)) return;
    const std::string country = behind->folded;
    const Unit* plain = unit_named(measure.folded);
    if (!plain || !unit_named(country + " " + std::string(plain->word))) return;
    const auto rest = line.find_first_not_of(" ,;:", behind->end);
    line = line.substr(0, measure.begin) + country + " " + std::string(plain->word) + " (" + line.substr(std::min(rest, close));
    if (const auto empty = line.find("()"); empty != std::string::npos) line.replace(empty, 2, "  ");
}

// "4 green chiles (jalapeño type)" as "4 green chiles, such as jalapeño".
void write_type_as_kind(std::string& line) {
    for (std::size_t open = line.find('('); open != std::string::npos; open = line.find('(', open + 1)) {
        const std::size_t close = line.find(')', open);
        if (close == std::string::npos) return;
        std::string inside = line.substr(open + 1, close - open - 1);
        constexpr std::string_view ending = "type";
        if (inside.size() < ending.size() + 4 || !inside.ends_with(ending) || inside.find_first_of(",;0123456789") != std::string::npos)
            continue;
        inside.resize(inside.size() - ending.size());
        if (inside.back() != ' ' && inside.back() != '-') continue;
        inside.pop_back();
        line.replace(open, close - open + 1, ", such as " + inside);
        while (open > 0 && line[open - 1] == ' ') line.erase(--open, 1);
    }
}

// "Swiss chard 'Bright Lights'": the name of a sort.
void write_quoted_sort(std::string& line) {
    constexpr std::size_t most_words = 3;
    for (const auto& [opens, closes] :
         {std::pair<std::string_view, std::string_view>{"'", "'"}, {"\u2018", "\u2019"}, {"\u201C", "\u201D"}, {"\"", "\""}}) {
        const std::size_t open = line.find(" " + std::string(opens));
        if (open == std::string::npos) continue;
        const std::size_t from = open + 1 + opens.size(), close = line.find(closes, from);
        if (close == std::string::npos || std::isupper(static_cast<unsigned char>(line[from])) == 0) continue;
        const std::size_t end = close + closes.size();
        const std::string name = line.substr(from, close - from);
        const bool letters = std::all_of(name.begin(), name.end(), [](char c) {
            return c == ' ' || static_cast<unsigned char>(c) >= 0x80 || std::isalpha(static_cast<unsigned char>(c)) != 0;
        });
        const bool stands_alone = end >= line.size() || std::string_view(" ,;)").find(line[end]) != std::string_view::npos;
        if (!letters || !stands_alone || std::count(name.begin(), name.end(), ' ') >= static_cast<std::ptrdiff_t>(most_words)) continue;
        line.replace(open, end - open, " (variety " + name + ")");
    }
}

// "| Pork butt | 5 lb | 2268 g |": the cells of a table.
void take_cells(std::string& line) {
    const auto first = line.find_first_not_of(' ');
    if (first == std::string::npos || line[first] != '|') return;
    line[first] = ' ';
    if (const auto last = line.find_last_not_of(' '); last != std::string::npos && line[last] == '|') line[last] = ' ';
}

}  // namespace

void clean_line(std::string& line, const Knowledge& knowledge) {
    for (const std::string_view sign : {"\t", "\u00A0", "\u2009", "\u202F", "\u2026", "[ ]", "[x]", "[X]", "†", "‡", "☑", "✔"})
        blank_all(line, sign);
    for (std::size_t i = line.find(".."); i != std::string::npos; i = line.find("..", i)) {
        const std::size_t end = std::min(line.find_first_not_of('.', i), line.size());
        blank(line, i, end);
    }
    take_cells(line);
    write_quoted_sort(line);
    write_inches(line);
    write_lean_first(line);
    write_fat_of_cream(line, knowledge);
    write_type_as_kind(line);
    write_country_of_measure(line, knowledge);
    write_kinds_in_brackets(line, false, knowledge);
    take_style(line, knowledge);
    take_free_of(line, knowledge);
    take_thaw_day(line, knowledge);
    take_temperatures(line);
    write_lean_to_fat(line);
}

std::size_t line_start(const std::string& line) {
    Cursor cursor(line);
    cursor.space();
    const std::size_t before = cursor.at();
    const bool bullet = std::any_of(bullets.begin(), bullets.end(), [&](auto sign) { return cursor.eat(sign); });
    if (!bullet && !(cursor.eat_dash() && !cursor.digit())) cursor.go(before);
    cursor.space();
    return past_numbering(line, cursor.at());
}

namespace {

// "ice or water" is either, and weighs the same.
void take_ice_or_water(std::string& line) {
    const auto words = words_of(line);
    for (std::size_t i = 0; i + 2 < words.size(); ++i) {
        const auto& first = words[i].folded;
        const auto& last = words[i + 2].folded;
        const bool pair = (first == "ice" && last == "water") || (first == "water" && last == "ice");
        if (!pair || words[i + 1].folded != "or") continue;
        return first == "ice" ? blank(line, words[i].begin, words[i + 1].end) : blank(line, words[i + 1].begin, words[i + 2].end);
    }
}

// "2x bunches of coriander"
void take_times_sign(std::string& line) {
    Cursor cursor(line, line_start(line));
    if (!number_at(cursor, false)) return;
    const std::size_t at = cursor.at();
    const auto letter = [&](std::size_t i) { return i < line.size() && std::isalpha(static_cast<unsigned char>(line[i])) != 0; };
    if (at + 2 < line.size() && line[at] == 'x' && line[at + 1] == ' ' && letter(at + 2)) line[at] = ' ';
}

// "2 green chiles, such as serrano": the kind that is named is meant.
void take_such_as(std::string& line, const Knowledge& knowledge) {
    const auto words = words_of(line);
    for (std::size_t i = 1; i + 2 < words.size(); ++i) {
        if (words[i].folded != "such" || words[i + 1].folded != "as") continue;
        std::size_t last = i + 2;
        while (last < words.size() && words[last].segment == words[i + 2].segment) ++last;
        const std::string kind = phrase(words, i + 2, last);
        const auto* meant = knowledge.ingredient_named(kind);
        if (!meant) return;
        for (std::size_t first = 0; first < i; ++first)
            for (std::size_t end = i; end > first; --end) {
                const std::string name = phrase(words, first, end);
                const auto* other = knowledge.ingredient_named(name);
                if (!other) other = knowledge.ingredient_meant(name);
                if (!other || other->family != meant->family) continue;
                blank(line, words[i].begin, words[last - 1].end);
                line.replace(words[first].begin, words[end - 1].end - words[first].begin, kind);
                return;
            }
        return;
    }
}

// "durch die 5-mm-Scheibe gewolft", "through a 6 mm plate": which plate is no part of the food.
void take_plate(std::string& line, const Knowledge& knowledge) {
    const auto words = words_of(line);
    for (std::size_t i = 1; i + 1 < words.size(); ++i) {
        if (words[i].folded != "through" && words[i].folded != "durch") continue;
        constexpr std::size_t near = 5;  // words
        for (std::size_t at = i + 1; at < std::min(words.size(), i + near); ++at) {
            const auto& word = words[at].folded;
            const auto end = word.find_last_of("- ");
            const std::string tail = end == std::string::npos ? word : word.substr(end + 1);
            if (knowledge.in_list(WordList::plate_word, tail) && tail != "grinder") return blank(line, words[i].begin, words[at].end);
        }
    }
}

}  // namespace

void rewrite_phrases(std::string& line, const Knowledge& knowledge) {
    take_such_as(line, knowledge);
    take_plate(line, knowledge);
    take_times_sign(line);
    take_ice_or_water(line);
    const auto words = words_of(line);
    for (std::size_t i = 1; i + 1 < words.size(); ++i) {  // "green chiles x 4", "garlic x 5 cloves"
        Cursor behind(line, words[i + 1].begin), before(line, words[i - 1].begin);
        if (words[i].folded == "x" && number_at(behind, false) && !number_at(before, false)) line[words[i].begin] = ',';
    }
    rewrite_parts_of_food(line, knowledge);
}

namespace {

// "blanching" as "blanched"; empty where that is no preparation.
std::string done_by(const std::string& gerund, const Knowledge& knowledge) {
    constexpr std::string_view ending = "ing";
    if (gerund.size() < 6 || !gerund.ends_with(ending)) return {};
    const std::string stem = gerund.substr(0, gerund.size() - ending.size());
    for (const std::string& done : {stem + "ed", stem.back() == 'y' ? stem.substr(0, stem.size() - 1) + "ied" : stem})
        if (knowledge.preparation_named(done)) return done;
    return {};
}

}  // namespace

void rewrite_weighed_after(std::string& line, const Knowledge& knowledge) {
    const auto words = words_of(line);
    for (std::size_t i = 0; i + 1 < words.size(); ++i) {
        if (words[i].folded != "after") continue;
        std::size_t first = i, last = i + 1;
        while (first > 0 && knowledge.in_list(WordList::weighed_word, words[first - 1].folded)) --first;
        std::string done;
        for (; last < words.size(); ++last) {
            if (words[last].folded == "and") continue;
            const std::string one = done_by(words[last].folded, knowledge);
            if (one.empty()) break;
            done += (done.empty() ? "" : ", ") + one;
        }
        if (done.empty()) continue;
        line.replace(words[first].begin, words[last - 1].end - words[first].begin, done);
        line += " [weighed prepared]";
        return;
    }
}

std::string take_extra(std::string& line, const Knowledge& knowledge) {
    constexpr std::array<std::string_view, 3> firsts{"or", "plus", "and"};
    const auto words = words_of(line);
    for (std::size_t i = 2; i + 1 < words.size(); ++i) {
        if (std::find(firsts.begin(), firsts.end(), words[i].folded) == firsts.end()) continue;
        const auto& next = words[i + 1].folded;
        const bool to_taste = next == "to" && i + 2 < words.size() && (words[i + 2].folded == "taste" || words[i + 2].folded == "your");
        const bool more = knowledge.in_list(WordList::extra_amount, next) ||
                          (i + 3 < words.size() &&
                           knowledge.in_list(WordList::extra_amount, next + " " + words[i + 2].folded + " " + words[i + 3].folded));
        if (!to_taste && !more) continue;
        std::string taken = line.substr(words[i].begin, words.back().end - words[i].begin);
        blank(line, words[i].begin, words.back().end);
        return taken;
    }
    return {};
}

namespace {

// "2 oz bacon, ground with the pork": the pork that another line weighs.
bool ground_with_another(const std::vector<Word>& words, std::size_t with, const Knowledge& knowledge) {
    if (words[with].folded != "with" || cut_word(words, with - 1, knowledge) == 0) return false;
    if (with + 2 >= words.size() || words[with + 1].folded != "the" || words[with + 2].segment != words[with].segment) return false;
    std::size_t last = with + 3;
    while (last < words.size() && words[last].segment == words[with].segment) ++last;
    const std::string other = phrase(words, with + 2, last);
    return knowledge.ingredient_named(other) || knowledge.ingredient_meant(other);
}

}  // namespace

std::string take_of_another_line(std::string& line, const Knowledge& knowledge) {
    constexpr std::array<std::string_view, 2> firsts{"with", "using"};
    const auto words = words_of(line);
    for (std::size_t i = 1; i + 2 < words.size(); ++i) {
        std::size_t at = i + 1;
        if (words[i].folded == "in") {  // "boiled in the wine"
            const auto& other = words[at + 1].raw;
            if (words[at].folded != "the" || (!knowledge.ingredient_named(other) && !knowledge.ingredient_meant(other))) continue;
        } else {
            if (!contains(firsts, words[i].folded)) continue;
            while (at < words.size() && knowledge.in_list(WordList::some_of_another, words[at].folded)) ++at;
            const bool of_the =
                at + 2 < words.size() && words[at].folded == "of" && (words[at + 1].folded == "the" || words[at + 1].folded == "your");
            if ((at == i + 1 || !of_the) && !ground_with_another(words, i, knowledge)) continue;
        }
        std::size_t last = at + 1;
        while (last + 1 < words.size() && words[last + 1].segment == words[at].segment) ++last;
        std::string taken = line.substr(words[i].begin, words[last].end - words[i].begin);
        blank(line, words[i].begin, words[last].end);
        return taken;
    }
    return {};
}

void take_idle_start(std::string& line, const Knowledge& knowledge) {
    const auto words = words_of(line);
    if (words.size() < 3 || !knowledge.in_list(WordList::idle_start, words[0].folded) ||
        std::isdigit(static_cast<unsigned char>(words[1].raw.front())) != 0)
        return;
    for (std::size_t i = 2; i < words.size(); ++i) {
        Cursor cursor(line, words[i].begin);
        if (words[i].segment == words[0].segment || !number_at(cursor, false)) continue;
        const auto unit = unit_at(cursor);
        if (unit && unit->unit->dimension == Dimension::mass) return blank(line, words[0].begin, words[0].end);
    }
}

void turn_base_first(std::string& line, const Knowledge& knowledge) {
    const auto words = words_of(line);
    if (words.size() < 4) return;
    const auto& first = words[0].folded;
    const auto each = [&](std::size_t i) { return words[i].folded == "each" || words[i].folded == "every"; };
    const bool per = first == "per", led = (first == "for" || first == "to") && each(1);
    if (!per && !led) return;
    std::size_t at = led || each(1) ? 2 : 1;
    Cursor cursor(line, words[at].begin);
    number_at(cursor, false);
    const auto unit = unit_at(cursor);
    if (!unit || unit->unit->dimension != Dimension::mass) return;
    while (at < words.size() && (words[at].begin < cursor.at() || knowledge.in_list(WordList::base_word, words[at].folded))) ++at;
    if (at >= words.size() || line.find_first_of("0123456789", words[at].begin) == std::string::npos) return;
    const std::string base = line.substr(words[led || each(1) ? 2 : 1].begin, words[at - 1].end - words[led || each(1) ? 2 : 1].begin);
    line = line.substr(words[at].begin) + " per " + base;
}

}  // namespace standin
