#include "formula/stock/stock_said.hpp"

#include <algorithm>
#include <array>
#include <cctype>

#include "core/names.hpp"
#include "core/words.hpp"
#include "formula/food/foods_in_any_tongue.hpp"
#include "formula/food/name_text.hpp"
#include "formula/hazards/hazards.hpp"
#include "formula/lexer/digits.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/stock/stock_amounts.hpp"
#include "formula/words/stock_words.hpp"
#include "formula/words/tongues.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/records/word_list.hpp"
#include "knowledge/words/hazard_text.hpp"

namespace standin {
namespace {

constexpr std::size_t longest_said = 5;  // words

// What of `words` stands in the list, from `first` on, the longest that it can; zero where nothing does.
std::size_t words_listed(const std::vector<Word>& words, std::size_t first, WordList list, const Knowledge& knowledge) {
    for (std::size_t last = std::min(words.size(), first + longest_said); last > first; --last)
        if (knowledge.in_list(list, fold(phrase(words, first, last)))) return last - first;
    return 0;
}

std::string_view without_articles(std::string_view names, const Knowledge& knowledge) {
    const auto words = words_of(names);
    std::size_t first = 0;
    while (first + 1 < words.size()) {
        const auto count = std::min(words_listed(words, first, WordList::before_a_name, knowledge), words.size() - 1 - first);
        if (count == 0) break;
        first += count;
    }
    return words.empty() ? names : names.substr(words[first].begin);
}

bool opens_with_small_letter(std::string_view word) { return !word.empty() && std::isupper(static_cast<unsigned char>(word.front())) == 0; }

// A name in the midst of a line has a capital: "chard, Fordhook".
bool is_a_name(std::string_view word, std::string_view line) { return !opens_with_small_letter(word) && line.find(word) != 0; }

}  // namespace

std::optional<std::string> known_names(std::string_view names, const NamesFood& names_food, const Knowledge& knowledge) {
    const std::string_view plain = without_articles(names, knowledge);
    for (const auto text : {names, plain}) {
        if (bare(text).empty()) continue;
        if (names_food(text)) return std::string(text);
        for (const auto& way : in_english(text, knowledge))
            if (const auto name = bare(way.text); !name.empty() && names_food(name)) return std::string(name);
    }
    return std::nullopt;
}

std::optional<std::string> denied_in(std::string_view line, const NamesFood& names_food, const Knowledge& knowledge) {
    if (!small_amounts(line, knowledge).empty()) return std::nullopt;
    for (const std::string& said : {std::string(line), with_apostrophes_apart(line)}) {
        const StockLine says = stock_line(said, knowledge);
        if (says.says != StockWord::none) continue;
        if (auto names = known_names(says.names, names_food, knowledge)) return names;
    }
    return std::nullopt;
}

std::optional<InPlace> in_place_in(std::string_view line, const NamesFood& names_food, const Knowledge& knowledge) {
    const std::string apart = with_apostrophes_apart(line);
    const auto words = words_of(apart);
    const auto text = [&](std::size_t first, std::size_t last) {
        return std::string(bare(std::string_view(apart).substr(words[first].begin, words[last - 1].end - words[first].begin)));
    };
    for (std::size_t at = 0; at < words.size(); ++at) {
        const std::size_t from = at + words_listed(words, at, WordList::in_place_of_food, knowledge), last = words.size();
        if (from == at || from == last) continue;
        if (at > 0) {
            if (auto none = known_names(text(from, last), names_food, knowledge)) return InPlace{text(0, at), *none};
            continue;
        }
        for (std::size_t cut = from + 1; cut < last; ++cut) {  // "zamiast szpinaku szczypiorek": where both sides are known
            auto none = known_names(text(from, cut), names_food, knowledge);
            const auto some = known_names(text(cut, last), names_food, knowledge);
            if (none && some) return InPlace{*some, *none};
        }
    }
    return std::nullopt;
}

namespace {

// "chestnut 250 g" below "mushrooms" as "chestnut mushrooms 250 g", where that is a food; empty where it is none.
std::string with_its_head(std::string_view part, std::string_view head, const Knowledge& knowledge) {
    constexpr std::size_t longest = 3;  // words
    const auto words = words_of(part);
    const auto is_food = [&](const std::string& name) { return known_ingredient(name, knowledge) != nullptr; };
    for (std::size_t first = 0; first < words.size(); ++first)
        for (std::size_t last = std::min(words.size(), first + longest); last > first; --last) {
            const std::string name = phrase(words, first, last);
            if (has_digit(name)) continue;
            const std::string behind = name + " " + std::string(head), before = std::string(head) + " " + name;
            const auto* joined = known_ingredient(is_food(behind) ? behind : before, knowledge);
            if (!joined || joined == known_ingredient(name, knowledge)) continue;
            std::string whole(part);
            return whole.replace(words[first].begin, words[last - 1].end - words[first].begin, is_food(behind) ? behind : before);
        }
    return {};
}

}  // namespace

std::string without_head(std::string_view line, const NamesFood& names_food, const IsItem& is_item, const Knowledge& knowledge) {
    constexpr std::size_t longest = 3;  // words
    const std::string as_written(line);
    const auto sign = std::min(line.find(": "), line.find(" - "));
    if (sign == std::string_view::npos) return as_written;
    const auto head = bare(line.substr(0, sign)), rest = bare(line.substr(sign + 2));
    const auto words = words_of(head);
    if (words.empty() || words.size() > longest || has_digit(head)) return as_written;
    if (stock_line(head, knowledge).says != StockWord::weighed || !hazards_in(hazard_text(head), knowledge.records().lexicon).empty())
        return as_written;
    const auto parts = parts_of_list(rest, knowledge);
    std::string joined;
    bool any = false;
    for (const auto part : parts) {
        const std::string whole = with_its_head(part, head, knowledge);
        any = any || !whole.empty();
        joined += (joined.empty() ? "" : ", ") + (whole.empty() ? std::string(part) : whole);
    }
    if (any && has_digit(rest)) return joined;
    if (!kind_named(head, knowledge) && (names_food(head) || !foods_in_any_tongue(head, knowledge).empty())) return as_written;
    return parts.size() > 1 && is_item(parts.front()) ? std::string(rest) : as_written;
}

std::vector<std::string_view> parts_around_raw_pulse(std::string_view line, const Knowledge& knowledge) {
    const auto parts = parts_of_list(line, knowledge);
    std::string rest;
    for (const auto part : parts)
        if (!raw_pulse_in(part, {}, knowledge)) rest += std::string(part) + ", ";
    const bool apart = parts.size() > 1 && !rest.empty() && !raw_pulse_in(rest, {}, knowledge);
    // "dry" by itself behind them is said of one of them, and "same scoop as the beans" of what stands before it.
    const auto remark = [&](std::string_view part) {
        return !has_digit(part) && (foods_in_any_tongue(part, knowledge).empty() || raw_pulse_in(part, {}, knowledge));
    };
    return apart && std::none_of(parts.begin(), parts.end(), remark) ? parts : std::vector<std::string_view>{};
}

Marked mark_behind(std::string_view line) {
    constexpr std::array<std::string_view, 6> gone{"\u2717", "\u2718", "\u274C", "\u2716", "\U0001F6AB", "\u2205"};
    constexpr std::array<std::string_view, 6> there{"\u2713", "\u2714", "\u2611", "\u2705", "\u221A", "+"};
    constexpr std::array<std::string_view, 12> open{"--", "---", "x", "X", "-", "\u2013", "\u2014", "\u2212", "/", "~", "...", "\u2026"};
    if (line.size() > 4 && line.starts_with("~~") && line.ends_with("~~")) return {Mark::open, bare(line.substr(2, line.size() - 4))};
    std::string_view text = line;
    const bool bracket = text.ends_with(')');
    if (bracket) text.remove_suffix(1);
    for (const std::string_view selector : {"\uFE0F", "\uFE0E"})
        if (text.ends_with(selector)) text.remove_suffix(selector.size());
    const auto behind = [&](const auto& signs, Mark mark) -> Marked {
        for (const auto sign : signs) {
            if (!text.ends_with(sign) || text.size() <= sign.size()) continue;
            const char before = text[text.size() - sign.size() - 1];
            if (before != ' ' && before != ':' && before != '\t' && !(bracket && before == '(')) continue;
            if (const auto rest = bare(text.substr(0, text.size() - sign.size())); !rest.empty() && !has_digit(rest)) return {mark, rest};
        }
        return {};
    };
    for (const auto& found : {behind(gone, Mark::gone), behind(there, Mark::there), behind(open, Mark::open)})
        if (found.mark != Mark::none) return found;
    return {};
}

std::string may_say_none(std::string_view line, const IsItem& is_item, const Knowledge& knowledge) {
    if (has_digit(line)) return {};
    const auto words = words_of(line);
    for (std::size_t at = 1; at < words.size(); ++at)
        if (const auto count = words_listed(words, at, WordList::stock_asks, knowledge); count > 0 && at + count == words.size())
            return phrase(words, at, words.size());
    if (is_item(line)) return {};
    const auto parts = parts_of_list(line, knowledge);
    if (parts.empty()) return {};
    const bool several = std::any_of(parts.begin() + 1, parts.end(), is_item);  // "kale, chard, zorb": of which of them is it said?
    for (const auto part : parts)
        if (!several && part.data() != parts.front().data() && remark_of_part(parts, part, knowledge) == RemarkIs::noted &&
            !is_a_name(part, line))
            return std::string(part);
    if (several) return {};
    const auto read = read_line("100 g " + std::string(line), Origin("", {1, 1}), knowledge, {}, true);
    if (!read) return {};
    for (const auto& note : read->line.notes)
        if (note.kind == ReasonKind::passed_unknown && !is_a_name(note.about, line)) return note.about;
    return {};
}

Error asks_if_there(std::string_view line, std::string_view word, const std::string& where, const Knowledge& knowledge) {
    const auto foods = foods_in_any_tongue(line, knowledge);
    const std::string food = foods.empty() ? "of it" : foods.front()->names.front(), of = foods.empty() ? "such food" : food;
    return {Trouble::bad_data,
            "\"" + std::string(line) + "\": is there any " + food +
                (word.empty() ? "" : ", or does \"" + std::string(word) + "\" say that there is none"),
            where,
            {"no " + of, of}};
}

std::string without_only(std::string line, const NamesFood& names_food, const Knowledge& knowledge) {
    const auto words = words_of(line);
    if (words.size() < 2 || has_digit(line)) return line;
    const auto only = [&](const Word& word) {
        return knowledge.in_list(WordList::so_much_left, word.folded) && !knowledge.in_list(WordList::left_over_word, word.folded);
    };
    if (only(words.back()))
        if (auto rest = known_names(line.substr(0, words[words.size() - 2].end), names_food, knowledge)) return std::move(*rest);
    if (only(words.front()))
        if (auto rest = known_names(line.substr(words[1].begin), names_food, knowledge)) return std::move(*rest);
    return line;
}

bool tells_where_it_is(std::string_view line, const StockLine& says, const Knowledge& knowledge) {
    const auto comma = line.rfind(',');
    if (comma == std::string_view::npos || (says.says != StockWord::some && says.says != StockWord::none)) return false;
    if (!has_digit(line.substr(0, comma))) return false;
    return knowledge.in_list(WordList::passed_over, fold(line.substr(comma + 1))) &&
           read_line(line, Origin("", {1, 1}), knowledge, {}, true).has_value();
}

bool is_slip_of_a_name(std::string_view part, const StockNamer& namer, const Origin& origin) {
    constexpr std::size_t shortest = 5;  // letters
    if (part.size() < shortest || words_of(part).size() > 1) return false;
    const auto named = namer.named(part, origin, false);
    return !named && slip_of_the_pen(named.error(), part, namer.knowledge());
}

std::optional<ReadLine> as_the_formula_says(const std::string& read, std::string_view text, const Origin& origin, const StockNamer& namer,
                                            const Knowledge& knowledge) {
    for (auto name : without_loose_amount(text, knowledge)) {
        while (!name.empty() && !namer.knows(name)) name = without_weight(name);
        if (name.empty()) continue;
        const auto names = namer.named(name, origin, false);
        if (!names || !names->loose || names->ids.size() != 1 || names->ids.front() == read) return std::nullopt;
        std::string other(text);
        other.replace(static_cast<std::size_t>(name.data() - text.data()), name.size(),
                      knowledge.ingredient(names->ids.front())->names.front());
        auto again = read_line(other, origin, knowledge, {}, true);
        if (!again || again->line.ingredient != names->ids.front()) return std::nullopt;
        if (names->note) again->line.notes.push_back(*names->note);
        return std::move(*again);
    }
    return std::nullopt;
}

}  // namespace standin
