#include "formula/stock/stock_amounts.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "core/words.hpp"
#include "formula/amounts/process_text.hpp"
#include "formula/food/kin_measure.hpp"
#include "formula/food/line_notes.hpp"
#include "formula/food/name_text.hpp"
#include "formula/lexer/digits.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/lexer/measures.hpp"
#include "formula/lexer/number_text.hpp"
#include "formula/lexer/quantity_text.hpp"
#include "formula/line/bone.hpp"
#include "formula/line/line_text.hpp"
#include "formula/stock/stock_packs.hpp"
#include "formula/words/stock_words.hpp"
#include "formula/words/tongues.hpp"
#include "knowledge/records/tissue.hpp"
#include "knowledge/records/word_list.hpp"
#include "knowledge/words/hazard_text.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

bool number_at_start(std::string_view line) {
    Cursor cursor(line);
    return number_at(cursor).has_value();
}

// "250 ml white wine left in the bottle"
void drop_left(std::string& line, const Knowledge& knowledge) {
    const auto words = words_of(line);
    for (std::size_t i = words.size(); i-- > 1;) {
        if (!knowledge.in_list(WordList::left_over_word, words[i].folded)) continue;
        const bool in_it = i + 1 < words.size() && words[i + 1].folded == "in";
        bool half = false;  // "mustard (half left)"
        for (std::size_t from = i < 3 ? 0 : i - 3; from < i; ++from)
            half = half || knowledge.in_list(WordList::stock_half, fold(phrase(words, from, i + 1)));
        if (half) continue;
        if (in_it || i + 1 == words.size()) return drop_left(line = line.substr(0, words[i - 1].end), knowledge);
    }
}

// What is left of a line around what was taken out of it.
std::string bare_of(std::string_view before, std::string_view behind) {
    std::string_view name = bare(behind);
    Cursor of(name);
    if (of.eat_word("of")) name = bare(name.substr(of.at()));
    const std::string_view first = bare(before);
    return std::string(first) + (first.empty() || name.empty() ? "" : " ") + std::string(name);
}

bool is_number_word(const std::string& folded, const Knowledge& knowledge) {
    return folded == "another" || knowledge.in_list(WordList::counting_word, folded);
}

// "walnuts, the last 50 g", "noch 100 g Spinat", "the rest of the walnuts (50 g)": how much there is.
void drop_so_much_left(std::string& line, const Knowledge& knowledge) {
    constexpr std::size_t longest = 4;  // words
    if (!has_digit(line)) return;
    const auto words = words_of(line);
    for (std::size_t first = 0; first < words.size(); ++first)
        for (std::size_t last = std::min(words.size() - 1, first + longest); last > first; --last) {
            const bool before_figure = std::isdigit(static_cast<unsigned char>(words[last].raw.front())) != 0;
            if ((first > 0 && !before_figure) || !knowledge.in_list(WordList::so_much_left, fold(phrase(words, first, last)))) continue;
            line.erase(words[first].begin, words[last].begin - words[first].begin);
            return drop_so_much_left(line, knowledge);
        }
}

// "mustard (1 jar)" as "1 jar mustard".
void turn_amount_in_brackets(std::string& line) {
    const auto open = line.rfind('(');
    if (open == std::string::npos || open == 0 || line.back() != ')' || has_digit(line.substr(0, open))) return;
    const std::string amount = line.substr(open + 1, line.size() - open - 2);
    Cursor cursor(amount);
    const auto read = cursor.digit() ? amount_at(cursor) : std::nullopt;
    cursor.space();
    const Unit* unit = read && read->parts.size() == 1 ? read->parts.front().unit : nullptr;
    if (unit && unit->dimension == Dimension::count && cursor.done()) line = amount + " " + std::string(bare(line.substr(0, open)));
}

// "lime juice (bottle, 1/3 left)" as "lime juice, 1/3 bottle".
void turn_share_left(std::string& line, const Knowledge& knowledge) {
    const auto open = line.find('('), close = line.find(')', open);
    if (open == std::string::npos || open == 0 || close == std::string::npos) return;
    const auto inside = words_of(line.substr(open + 1, close - open - 1));
    constexpr std::size_t said = 3;  // what holds it, the share, "left"
    if (inside.size() != said || inside[1].raw.find('/') == std::string::npos) return;
    const Unit* unit = unit_named(inside[0].folded);
    const bool left = knowledge.in_list(WordList::left_over_word, inside[2].folded) || inside[2].folded == "full";
    if (!unit || !is_container(*unit) || !left) return;
    line = std::string(bare(line.substr(0, open))) + ", " + inside[1].raw + " " + inside[0].raw + line.substr(close + 1);
}

// "leeks 4, celery half a head": what stands behind the last comma names its own food, up to the word `end`.
bool names_its_own(const std::vector<Word>& words, std::size_t end, const Knowledge& knowledge) {
    std::size_t first = end;
    while (first > 0 && words[first - 1].segment == words.back().segment) --first;
    if (first == 0 || first == end) return false;
    const std::string name = phrase(words, first, end);
    return knowledge.ingredient_named(name) || knowledge.ingredient_meant(name);
}

// "can of green chiles x2" as "2 can of green chiles". Of several foods it is of the last: "mint, dill x3".
void turn_times(std::string& line, const Knowledge& knowledge) {
    const auto words = words_of(line);
    if (words.size() < 2) return;
    const std::string& last = words.back().folded;
    if (names_its_own(words, words.size() - 1, knowledge)) return;
    if (last.size() < 2 || last[0] != 'x' || last.find_first_not_of("0123456789", 1) != std::string::npos || number_at_start(line)) return;
    line = last.substr(1) + " " + line.substr(words.front().begin, words[words.size() - 2].end - words.front().begin);
}

// What a share of a container leaves: "500 ml bottle" as "250 ml bottle", "a bottle of cider vinegar" as "0.667 bottle of cider vinegar".
std::string with_share(const std::string& line, double share) {
    const auto words = words_of(line);
    for (const auto& word : words) {
        Cursor cursor(line, word.begin);
        const auto number = cursor.digit() ? number_at(cursor, false) : std::nullopt;
        const std::size_t end = cursor.at();
        const auto unit = number ? unit_at(cursor) : std::nullopt;
        if (unit && unit->unit->dimension != Dimension::count)
            return line.substr(0, word.begin) + trimmed_text(number->band.mid * share, 1) + line.substr(end);
    }
    for (std::size_t at = 0; at < words.size(); ++at) {
        const Unit* unit = unit_named(words[at].folded);
        if (!unit || !is_container(*unit)) continue;
        const bool one = at > 0 && (words[at - 1].folded == "a" || words[at - 1].folded == "one" || words[at - 1].raw == "1");
        const std::string name = bare_of(line.substr(0, words[at - (one ? 1 : 0)].begin), std::string_view(line).substr(words[at].end));
        return name.empty() || (!one && has_digit(line)) ? std::string() : trimmed_text(share, 3) + " " + words[at].raw + " of " + name;
    }
    return {};
}

// "a bottle of cider vinegar, two thirds full", "mustard (1 jar, a third left)"
void turn_share_full(std::string& line, const Knowledge& knowledge) {
    const auto words = words_of(line);
    for (std::size_t i = 1; i < words.size(); ++i) {
        Cursor cursor(line, words[i].begin);
        const auto share = number_at(cursor);
        if (!share || share->band.mid <= 0 || share->band.mid >= 1 || share->band.low < share->band.high) continue;
        std::size_t last = i + 1;
        while (last < words.size() && words[last].begin < cursor.at()) ++last;
        const bool told = last + 1 == words.size() && knowledge.in_list(WordList::share_full, words[last].folded);
        auto rest = told ? with_share(line.substr(0, words[i - 1].end), share->band.mid) : std::string();
        if (!rest.empty()) line = std::move(rest);
        if (told) return;
    }
}

// "pork butt 5 lb bone in": what is told of its bone stands apart (`says_with_bone`).
void drop_bone(std::string& line, const Knowledge& knowledge) {
    auto said = bone_said(line, knowledge);
    if (!said) return;
    while (said->first > 0 && (line[said->first - 1] == ' ' || line[said->first - 1] == ',')) --said->first;
    const bool bracket = said->first > 0 && line[said->first - 1] == '(' && said->second < line.size() && line[said->second] == ')';
    if (bracket) --said->first, ++said->second;
    const bool opens = said->first == 0 || line[said->first - 1] == '(' || (said->second < line.size() && line[said->second] == ',');
    line.replace(said->first, said->second - said->first, opens ? "" : " ");
    line = std::string(bare(line));
}

// "pork butt 5 lb bone out" as "pork butt 5 lb, bone out"
void part_remark(std::string& line, const Knowledge& knowledge) {
    const auto words = words_of(line);
    for (std::size_t i = 1; i + 1 < words.size(); ++i) {
        Cursor cursor(line, words[i].begin);
        const auto number = cursor.digit() ? number_at(cursor, false) : std::nullopt;
        const auto unit = number ? unit_at(cursor) : std::nullopt;
        if (!unit || unit->unit->dimension != Dimension::mass || cursor.done() || line[cursor.at()] != ' ') continue;
        if (knowledge.in_list(WordList::passed_over, fold(line.substr(cursor.at())))) line.insert(cursor.at(), ",");
        return;
    }
}

// "and about a pound of arugula"
void drop_joint(std::string& line, const Knowledge& knowledge) {
    const auto words = words_of(line);
    if (words.size() < 2 || !knowledge.in_list(WordList::stock_joint, words.front().folded)) return;
    const std::string& next = words[1].folded;  // "plus de persil" and "plus d'aneth" say that there is none
    if (next == "de" || next == "d" || words[1].raw.starts_with("d'") || words[1].raw.starts_with("D'")) return;
    line = line.substr(words[1].begin);
}

// Where an amount of things starts that runs to the end of the line; zero where none does.
std::size_t trailing_amount(const std::string& line, const Knowledge& knowledge) {
    const auto words = words_of(line);
    for (std::size_t i = 1; i < words.size(); ++i) {
        const bool digit = std::isdigit(static_cast<unsigned char>(words[i].raw.front())) != 0;
        const bool behind_comma = words[i].segment != words[i - 1].segment;
        if (!is_number_word(words[i].folded, knowledge) && !digit) continue;
        if (!behind_comma && words[i - 1].folded == "in") continue;  // "chives in a pot"
        Cursor cursor(line, words[i].begin);
        const auto amount = amount_at(cursor);
        cursor.space();
        const Unit* unit = amount ? amount->parts.front().unit : nullptr;
        if (!unit || unit->dimension != Dimension::count || !cursor.done()) continue;
        const bool grows = unit->word == "pot" || unit->word == "plant" || unit->word == "basket";
        if (names_its_own(words, i, knowledge)) return 0;
        if (behind_comma || !digit || is_container(*unit) || grows) return words[i].begin;  // "sauerkraut 1 can"
    }
    return 0;
}

// "sour cherries, unripe, 200 g": an amount that stands alone behind the last of several commas is of what the line begins with.
std::size_t lone_amount(const std::string& line) {
    const auto words = words_of(line);
    if (words.empty() || words.back().segment < 2) return 0;
    std::size_t first = words.size() - 1;
    while (first > 0 && words[first - 1].segment == words.back().segment) --first;
    if (line.find_first_of("0123456789") < words[first].begin) return 0;
    Cursor cursor(line, words[first].begin);
    if (!amount_at(cursor)) return 0;
    cursor.space();
    return cursor.done() ? words[first].begin : 0;
}

// "spring onions, 2 bunches, limp" as "2 bunches spring onions, limp": an amount by itself between two commas, and no other figure.
void turn_middle_amount(std::string& line) {
    const auto words = words_of(line);
    if (words.empty() || words.back().segment < 2) return;
    for (std::size_t i = 1; i < words.size(); ++i) {
        const bool opens = words[i].segment > 0 && words[i].segment < words.back().segment && words[i].segment != words[i - 1].segment;
        if (!opens) continue;
        std::size_t last = i + 1;
        while (last < words.size() && words[last].segment == words[i].segment) ++last;
        const std::string amount = line.substr(words[i].begin, words[last - 1].end - words[i].begin);
        const std::string before = line.substr(0, words[i - 1].end), behind = line.substr(words[last].begin);
        Cursor cursor(amount);
        if (!cursor.digit() || !amount_at(cursor)) continue;
        cursor.space();
        if (!cursor.done() || has_digit(before) || has_digit(behind)) continue;
        line = amount + " " + before + ", " + behind;
        return;
    }
}

// "walnuts, made in a factory that handles sesame 100 g": what it touched has no weight.
void turn_weight_behind_contact(std::string& line, const Knowledge& knowledge) {
    const auto words = words_of(line);
    const auto figure = std::find_if(words.begin(), words.end(),
                                     [](const Word& word) { return std::isdigit(static_cast<unsigned char>(word.raw.front())) != 0; });
    if (figure == words.begin() || figure == words.end()) return;
    Cursor cursor(line, figure->begin);
    const auto amount = amount_at(cursor);
    const Unit* unit = amount ? amount->parts.front().unit : nullptr;
    const std::size_t end = cursor.at();
    cursor.space();
    if (!unit || unit->dimension != Dimension::mass || !cursor.done()) return;
    const bool touched = std::any_of(
        words.begin() + 1, figure, [&](const Word& word) { return fits_any(knowledge.records().lexicon.handles, hazard_fold(word.raw)); });
    const bool apart = figure->segment > 0 && words[0].segment != (figure - 1)->segment && (figure - 1)->segment == figure->segment;
    if (touched && apart)
        line = line.substr(figure->begin, end - figure->begin) + " " + std::string(bare(std::string_view(line).substr(0, figure->begin)));
}

}  // namespace

std::string without_idle_words(std::string_view written, const Knowledge& knowledge) {
    constexpr std::array<std::pair<WordList, std::string_view>, 6> parts{{{WordList::three_quarters_of, "3/4 "},
                                                                          {WordList::two_thirds_of, "2/3 "},
                                                                          {WordList::half_of, "1/2 "},
                                                                          {WordList::third_of, "1/3 "},
                                                                          {WordList::quarter_of, "1/4 "},
                                                                          {WordList::nearly_full, "1 "}}};
    std::string line(written);
    for (const auto& [list, amount] : parts)
        for (const auto& words : knowledge.listed(list)) {
            const std::string said = words + " ";
            const auto at = line.find(said);
            if (at == std::string::npos || (at > 0 && line[at - 1] != ' ')) continue;
            Cursor behind(line, at + said.size());
            if (unit_at(behind)) line.replace(at, said.size(), amount);
        }
    const auto words = words_of(line);
    for (std::size_t i = words.size(); i-- > 0;) {
        const auto number = [&](std::size_t at) {
            Cursor cursor(line, words[at].begin);
            return cursor.digit() || is_number_word(words[at].folded, knowledge);
        };
        const bool doubt = i + 1 < words.size() && std::isdigit(static_cast<unsigned char>(words[i + 1].raw.front())) != 0 &&
                           knowledge.in_list(WordList::stock_doubt, words[i].folded) && words[i].folded != "if" &&
                           words[i].folded != "unless";
        const Unit* unit = i + 1 < words.size() ? unit_named(words[i + 1].folded) : nullptr;
        const bool idle =
            unit && unit->dimension == Dimension::count &&
            ((i == 0 && i + 2 < words.size() && words[i + 2].folded == "of") || (i > 0 && number(i - 1))) && !unit_named(words[i].folded) &&
            words[i].segment == words[i + 1].segment && !number(i) && size_word(words[i].folded).empty() &&
            (knowledge.in_list(WordList::plain_remark, words[i].folded) || knowledge.in_list(WordList::passed_over, words[i].folded)) &&
            !knowledge.in_list(WordList::stock_loose, words[i].folded);
        if (doubt || idle) line.erase(words[i].begin, words[i + 1].begin - words[i].begin);
    }
    return line;
}

std::string with_amount_first(std::string_view written, const Knowledge& knowledge) {
    std::string line(written);
    for (const std::string_view dash : {"\u2013", "\u2014"}) replace_all(line, dash, "-");
    replace_all(line, "\u2019", "'");
    for (const auto& about : knowledge.listed(WordList::about_in_brackets)) replace_all(line, "(" + about + " ", "(");
    bracket_drained(line);
    turn_weight_behind_contact(line, knowledge);
    drop_joint(line, knowledge);
    drop_so_much_left(line, knowledge);
    drop_bone(line, knowledge);
    line = with_packs_first(line, knowledge);
    turn_share_full(line, knowledge);
    part_remark(line, knowledge);
    turn_amount_in_brackets(line);
    turn_share_left(line, knowledge);
    drop_left(line, knowledge);
    turn_times(line, knowledge);
    turn_middle_amount(line);
    std::size_t at = trailing_amount(line, knowledge);
    if (at == 0) at = lone_amount(line);
    if (at > 0) return line.substr(at) + " " + std::string(bare(std::string_view(line).substr(0, at)));
    Cursor cursor(line);
    const bool counted = number_at(cursor).has_value();
    cursor.go(0);
    const auto unit = counted ? std::nullopt : unit_at(cursor);
    const bool many = line.substr(0, line.find(' ')).ends_with('s');  // "bags of nettles"
    return unit && !many && unit->unit->dimension == Dimension::count && cursor.eat_word("of") ? "1 " + line : line;
}

bool says_with_bone(std::string_view line, const Knowledge& knowledge) { return bone_said(line, knowledge).has_value(); }

std::optional<Exception> exception_in(std::string_view line, const Knowledge& knowledge) {
    constexpr std::size_t longest = 4;  // words
    const auto words = words_of(line);
    const bool nothing = !words.empty() && words.front().folded == "nothing";
    for (std::size_t at = 1; at + 1 < words.size(); ++at)
        for (std::size_t last = std::min(words.size() - 1, at + longest); last > at; --last) {
            if (!knowledge.in_list(WordList::but_there_is, fold(phrase(words, at, last)))) continue;
            Exception found{std::string(bare(line.substr(0, words[at].begin))), std::string(bare(line.substr(words[last].begin)))};
            if (knowledge.in_list(WordList::tells_form, fold(found.some))) return std::nullopt;  // "no fresh thyme, only dried"
            if (found.some.empty() || (!nothing && words_of(found.none).size() < 2)) break;
            if (nothing || stock_line(found.none, knowledge).says == StockWord::none || says_no_abroad(found.none, knowledge)) return found;
            break;
        }
    return std::nullopt;
}

namespace {

// "stock-spice" and "stock-herb" of a dry one, of which jars and tins are small.
std::string usual_sizes_of(const Ingredient* food) {
    if (!food || food->tissue != Tissue::dry) return "stock";
    if (food->family == "herbs") return "stock-herb";
    return food->family == "spices" || food->family == "dried-chiles" || food->family == "alliums" ? "stock-spice" : "stock";
}

std::optional<double> usual_grams(const AmountText& amount, const Ingredient* food, const Knowledge& knowledge) {
    const Unit& unit = *amount.parts.front().unit;
    const double number = amount.parts.front().number.mid;
    if (!is_container(unit) && food)
        if (const auto kin = weight_by_kin(amount, *food, {}, KinAgree::anyhow, knowledge)) return kin->mid;
    const bool growing = unit.word == "pot" && food && is_leaf(food->tissue);  // "Kerbel 1 Topf"
    for (const std::string& sizes : {usual_sizes_of(food), std::string("stock")}) {
        const std::string id = "reading." + sizes + "." + (growing ? "plant" : std::string(unit.word));
        if (knowledge.has_parameter(id)) return number * knowledge.parameter(id).mid;
    }
    return std::nullopt;
}

}  // namespace

std::optional<SizedLine> by_usual_size(std::string_view line, const Knowledge& knowledge) {
    Cursor cursor(line);
    const auto amount = amount_at(cursor);
    const Unit* unit = amount && amount->parts.size() == 1 ? amount->parts.front().unit : nullptr;
    if (!unit || unit->dimension != Dimension::count) return std::nullopt;
    cursor.eat_word("of");
    const std::string_view name = bare(line.substr(cursor.at()));
    if (name.empty()) return std::nullopt;
    const auto read = read_line("100 g " + std::string(name), Origin("", {1, 1}), knowledge, {}, true);
    const Ingredient* food = read ? knowledge.ingredient(read->line.ingredient) : nullptr;
    std::string called(name);
    const bool grows = unit->word == "plant" || unit->word == "pot";
    if (const auto* leaf = grows && food && food->tissue == Tissue::dry ? known_ingredient("fresh " + called, knowledge) : nullptr) {
        called = leaf->names.front();  // "oregano 1 plant"
        food = leaf;
    }
    const auto grams = usual_grams(*amount, food, knowledge);
    if (!grams) return std::nullopt;
    const std::string weight = plain_number(std::round(*grams)) + " g";
    Reason told = reason_about(ReasonKind::taken_as_amount, std::string(line));
    told.note = weight;
    return SizedLine{weight + " " + called, std::move(told)};
}

namespace {

// What is poured comes in no handful; half of a bottle is of what is poured, half of a thing of what grows, and half of a jar of the rest.
bool fits_amount(const Ingredient& food, std::string_view amount) {
    constexpr std::array kept{Tissue::dry, Tissue::liquid, Tissue::paste};
    const bool poured = food.tissue == Tissue::liquid;
    if (amount == "1/2") return !contains(kept, food.tissue);
    if (amount == "1/2 bottle") return poured;
    return !poured || amount != "1 handful";
}

}  // namespace

std::optional<SizedLine> in_small_amount(std::string_view line, const Knowledge& knowledge) {
    for (const auto& [amount, name] : small_amounts(line, knowledge)) {
        std::string plain = (amount.empty() ? "" : amount + " ") + std::string(name);
        auto sized = amount.ends_with("jar") || amount.ends_with("bottle") ? by_usual_size(plain, knowledge) : std::nullopt;
        if (sized) plain = std::move(sized->text);
        const auto read = read_line(plain, Origin("", {1, 1}), knowledge, {}, true);
        if (!read || !fits_amount(*knowledge.ingredient(read->line.ingredient), amount)) continue;
        Reason taken = reason_about(ReasonKind::taken_as_amount, std::string(line));
        taken.note = plain;
        return SizedLine{std::move(plain), std::move(taken)};
    }
    return std::nullopt;
}

bool tells_amount(std::string_view text, const Knowledge& knowledge) {
    const auto words = words_of(text);
    const bool half = std::any_of(words.begin(), words.end(), [](const Word& word) { return word.folded == "half"; });
    if (half || has_digit(text)) return true;
    const auto ways = in_english(text, knowledge);
    return std::any_of(ways.begin(), ways.end(), [](const Rewording& way) { return has_digit(way.text); });
}

Reason amount_not_read(std::string_view text, std::string_view name) {
    Reason taken = reason_about(ReasonKind::taken_as_amount, std::string(text));
    taken.note = std::string(name) + " without a weight";
    return taken;
}

std::string without_brackets(std::string_view text) {
    std::string plain(text);
    std::replace_if(
        plain.begin(), plain.end(), [](char c) { return c == '(' || c == ')'; }, ' ');
    return plain;
}

std::string_view without_weight(std::string_view text) {
    Cursor cursor(text);
    if (amount_at(cursor) && cursor.at() > 0) return bare(text.substr(cursor.at()));
    for (std::size_t i = text.find(' '); i != std::string_view::npos; i = text.find(' ', i + 1)) {
        Cursor tail(text, i + 1);
        if (!amount_at(tail)) continue;
        tail.space();
        if (tail.done()) return bare(text.substr(0, i));
    }
    return {};
}

}  // namespace standin
