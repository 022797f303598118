#include "formula/words/stock_words.hpp"

#include <algorithm>
#include <array>

#include "core/names.hpp"
#include "core/words.hpp"
#include "formula/lexer/digits.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/lexer/measures.hpp"
#include "formula/lexer/number_text.hpp"
#include "formula/lexer/quantity_text.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

using Text = std::string_view;

bool same(Text a, Text b) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                      [](char x, char y) { return (x >= 'A' && x <= 'Z' ? static_cast<char>(x - 'A' + 'a') : x) == y; });
}

/// The rest when `text` starts with a word of the list, the longest that it can; else empty.
Text rest_after(Text text, WordList list, const Knowledge& knowledge) {
    Text best;
    for (std::size_t cut = text.find_first_of(" :"); cut != Text::npos; cut = text.find_first_of(" :", cut + 1))
        if (knowledge.in_list(list, fold(text.substr(0, cut)))) best = bare(text.substr(cut));
    return best;
}

/// Likewise at its end.
Text rest_before(Text text, WordList list, const Knowledge& knowledge) {
    for (std::size_t cut = text.find_first_of(" :("); cut != Text::npos; cut = text.find_first_of(" :(", cut + 1)) {
        std::string tail(bare(text.substr(cut)));
        std::erase(tail, ',');  // "too expensive, don't have"
        if (knowledge.in_list(list, fold(tail))) return bare(text.substr(0, cut));
    }
    return {};
}

bool is_number(const Word& word) {
    return word.folded.find_first_not_of("0123456789./-") == std::string::npos || word.raw.find_first_of("0123456789") == 0 ||
           word.raw.find("\xC2\xBD") != std::string::npos ||  // one half
           word.raw.find("\xC2\xBC") != std::string::npos || word.raw.find("\xC2\xBE") != std::string::npos;
}

bool is_loose(const Word& word, const Knowledge& knowledge) {
    if (knowledge.in_list(WordList::stock_loose, word.folded) || word.raw == "x" || word.raw == "~") return true;
    if (word.raw.size() > 1 && (word.raw[0] == 'x' || word.raw[0] == 'X') &&
        word.raw.find_first_not_of("0123456789", 1) == std::string::npos)
        return true;  // "spinach x2"
    if (is_number(word)) {
        const auto letters = word.folded.find_first_not_of("0123456789./- ");
        return letters == std::string::npos;  // "400g" is a weight
    }
    const Unit* unit = unit_named(word.folded);
    return unit && unit->dimension != Dimension::mass && unit->dimension != Dimension::percent;
}

// "Nos quedan", which folds to "no quedan" and says the contrary.
bool says_still_there(Text text, const Knowledge& knowledge) {
    const auto words = words_of(text);
    return words.size() > 1 &&
           knowledge.in_list_as_written(WordList::still_there, lower(text.substr(words[0].begin, words[1].end - words[0].begin)));
}

// "the kind with cashews", "con anacardi": no food stands before the word for "with".
bool says_with(Text clause, const Knowledge& knowledge) {
    for (const auto& word : words_of(clause)) {
        if (knowledge.in_list(WordList::with_word, word.folded)) return true;
        if (!knowledge.in_list(WordList::leads_to_with, word.folded)) return false;
    }
    return false;
}

}  // namespace

std::string_view bare(std::string_view text) {
    constexpr Text loose_ends = " \t,:;-*()";
    const auto first = text.find_first_not_of(loose_ends);
    if (first == Text::npos) return {};
    auto last = text.find_last_not_of(loose_ends);
    const auto closed = text.find(')', last);  // "capers (100 g)" keeps its bracket
    const auto open = text.substr(first, last - first + 1).rfind('(');
    if (closed == last + 1 && open != Text::npos && text.substr(first + open, last - first - open + 1).find(')') == Text::npos)
        last = closed;
    return text.substr(first, last - first + 1);
}

bool closes_list(std::string_view words, const Knowledge& knowledge) {
    const std::string folded = fold(words);
    return knowledge.in_list(WordList::stock_closing, folded) || knowledge.in_list(WordList::stock_closing, folded + " else");
}

StockLine stock_line(std::string_view text, const Knowledge& knowledge) {
    const bool ends_in_colon = !text.empty() && text.back() == ':';
    text = bare(text);
    const std::string folded = fold(text);
    if (knowledge.in_list(WordList::stock_closing, folded)) return {StockWord::nothing_else, {}};
    if (knowledge.in_list(WordList::stock_opening, folded)) return {StockWord::everything_else, {}};
    if (ends_in_colon || knowledge.in_list(WordList::stock_heading, folded)) return {StockWord::heading, {}};
    const bool ours = says_still_there(text, knowledge);
    if (const auto names = rest_after(text, WordList::stock_none, knowledge); !ours && !names.empty()) {
        const auto bare_names = rest_before(names, WordList::stock_when, knowledge);  // "no sorrel this week"
        return {StockWord::none, bare_names.empty() ? names : bare_names};
    }
    const bool nearly = !rest_before(text, WordList::stock_little, knowledge).empty();  // "almost gone", "fast leer"
    for (const auto list : {WordList::stock_none_after, WordList::gone_word})
        if (const auto names = rest_before(text, list, knowledge); !nearly && !names.empty()) return {StockWord::none, names};
    Text some;  // "there's plenty of parsley", "all the salt we want"
    for (Text names = text; !names.empty();) {
        some = names;
        names = rest_after(some, WordList::stock_some, knowledge);
        if (names.empty()) names = rest_before(some, WordList::stock_some, knowledge);
    }
    if (some.size() < text.size()) {
        const StockLine denied = stock_line(some, knowledge);  // "er is geen spinazie"
        return denied.says == StockWord::none ? denied : StockLine{StockWord::some, some};
    }
    return {StockWord::weighed, text};
}

std::vector<std::string_view> without_loose_amount(std::string_view text, const Knowledge& knowledge) {
    const auto words = words_of(text);
    std::size_t first = 0, last = words.size();
    std::vector<std::string_view> all;
    const auto part = [&](std::size_t from, std::size_t to) {
        return bare(text.substr(words[from].begin, words[to - 1].end - words[from].begin));
    };
    if (words.empty()) return all;
    std::size_t lead = 0, tail = 0;
    const auto is_food = [&](std::size_t i) {  // "parsley, walnuts": a walnut is a measure too
        const bool alone =
            (i == 0 || words[i - 1].segment != words[i].segment) && (i + 1 == last || words[i + 1].segment != words[i].segment);
        return alone && last > 1 && knowledge.ingredient_named(words[i].raw);
    };
    while (lead < last && is_loose(words[lead], knowledge) && !is_food(lead)) ++lead;
    while (tail < last && is_loose(words[last - 1 - tail], knowledge) && !is_food(last - 1 - tail)) ++tail;
    for (std::size_t dropped = 0; dropped <= lead + tail; ++dropped)
        for (std::size_t front = std::min(dropped, lead) + 1; front-- > 0;) {
            if (dropped - front > tail) continue;
            first = front;
            last = words.size() - (dropped - front);
            if (first < last) all.push_back(part(first, last));
        }
    return all;
}

std::vector<std::string_view> parts_of_list(std::string_view names, const Knowledge& knowledge) {
    constexpr std::array<Text, 7> between{",", ";", " and ", " or ", " & ", " + ", " / "};
    std::vector<std::string_view> all;
    std::size_t start = 0;
    for (std::size_t i = 0; i < names.size();) {
        const auto found =
            std::find_if(between.begin(), between.end(), [&](Text word) { return same(names.substr(i, word.size()), word); });
        if (found == between.end()) {
            ++i;
            continue;
        }
        const auto before = names.substr(0, i);  // "horta (dandelion and chicory)" is one food
        if (std::count(before.begin(), before.end(), '(') > std::count(before.begin(), before.end(), ')') &&
            names.find(')', i) != Text::npos) {
            ++i;
            continue;
        }
        // What a clause behind the food says it is made with is in that food: "pesto, the kind with cashews and pecorino".
        if (start > 0 && found->front() == ' ' && says_with(names.substr(start, i - start), knowledge)) {
            ++i;
            continue;
        }
        all.push_back(bare(names.substr(start, i - start)));
        i += found->size();
        start = i;
    }
    all.push_back(bare(names.substr(start)));
    std::erase_if(all, [](Text one) { return one.empty(); });
    return all;
}

bool tells_weight(std::string_view line) {
    for (std::size_t at = line.find('('); at != Text::npos; at = line.find('(', at + 1)) {
        Cursor cursor(line, at + 1);
        if (!number_at(cursor)) continue;
        const auto unit = unit_at(cursor);
        if (unit && unit->unit->dimension == Dimension::mass) return true;
    }
    return false;
}

bool tells_mass(std::string_view text) {
    for (const auto& word : words_of(text)) {
        Cursor cursor(text, word.begin);
        const auto amount = cursor.digit() ? amount_at(cursor) : std::nullopt;
        if (amount && amount->parts.front().unit && amount->parts.front().unit->dimension == Dimension::mass) return true;
    }
    return false;
}

bool is_unticked(std::string_view line) {
    for (const Text box : {"[ ]", "[]", "\u2610", "\u25A1"})
        if (line.find(box) != Text::npos) return true;
    return false;
}

std::string leaves_open(std::string_view line, const Knowledge& knowledge) {
    if (!line.empty() && line.back() == '?') return "\"" + std::string(line) + "\": on hand or not";
    const auto words = words_of(line);
    const auto says = [&](std::string_view word) {
        return std::any_of(words.begin(), words.end(), [&](const Word& one) { return one.folded == word; });
    };
    if (says("either") && says("or")) return "\"" + std::string(line) + "\" leaves open which of them is on hand";
    for (std::size_t i = 0; i < words.size(); ++i)
        if (knowledge.in_list(WordList::stock_doubt, words[i].folded) ||
            (i + 1 < words.size() && knowledge.in_list(WordList::stock_doubt, fold(phrase(words, i, i + 2)))))
            return "\"" + std::string(line) + "\" leaves open whether it is on hand";
    return {};
}

std::string with_apostrophes_apart(std::string_view line) {
    std::string apart(line);
    for (const std::string_view sign : {"'", "\u2019"}) replace_all(apart, sign, " ");
    return apart;
}

bool says_no_abroad(std::string_view line, const Knowledge& knowledge) {
    if (says_still_there(line, knowledge)) return false;
    const std::string apart = with_apostrophes_apart(line);  // "pas d'épinards"
    const auto words = words_of(apart);
    for (std::size_t last = std::min<std::size_t>(words.size(), 2); last > 0 && last < words.size() + 1; --last)
        if (words.size() > last && knowledge.in_list(WordList::stock_no_abroad, fold(phrase(words, 0, last)))) return true;
    return false;
}

namespace {

// "Sesame seeds (jar" of "sesame seeds (jar nearly empty)": what stands before a bracket that is still open.
Text before_bracket(Text names) {
    const auto open = names.rfind('(');
    return open == Text::npos || names.find(')', open) != Text::npos ? names : bare(names.substr(0, open));
}

}  // namespace

std::vector<SmallAmount> small_amounts(std::string_view line, const Knowledge& knowledge) {
    line = bare(line);
    const auto rest = [&](WordList list) {
        const auto names = rest_after(line, list, knowledge);
        return names.empty() ? rest_before(line, list, knowledge) : names;
    };
    for (const auto list : {WordList::stock_few, WordList::stock_little})  // "not much chard, maybe 100 g"
        if (const auto names = rest(list); !names.empty() && tells_mass(names)) return {{"", names}};
    if (const auto names = rest_before(line, WordList::stock_half, knowledge); !names.empty() && !has_digit(names))
        return {{"1/2", names}, {"1/2 bottle", names}, {"1/2 jar", names}};
    if (const auto names = rest(WordList::stock_few); !names.empty()) return {{"3", names}, {"1 handful", names}};
    if (const auto names = before_bracket(rest(WordList::stock_little)); !names.empty())
        return {{"1 handful", names}, {"1 tbsp", names}, {"1 tsp", names}, {"1/4", names}};  // the last: "a jar of capers (nearly empty)"
    return {};
}

std::vector<std::string> form_left(std::string_view names, std::string_view part) {
    const auto words = words_of(part), all = words_of(names);
    if (words.size() < 2 || all.empty() ||
        (words.front().folded != "only" && words.front().folded != "just" && words.front().folded != "but"))
        return {};
    const std::string form = phrase(words, 1, words.size());
    std::size_t food = 0;  // the last word of the first clause
    while (food + 1 < all.size() && all[food + 1].segment == all[0].segment) ++food;
    return {form, form + " " + all[food].raw};
}

bool is_weight(const std::string& written) {
    Cursor cursor(written);
    const auto amount = amount_at(cursor);
    return !amount || (amount->parts.front().unit && amount->parts.front().unit->dimension == Dimension::mass);
}

bool grows(std::string_view line, const Knowledge& knowledge) {
    const auto words = words_of(line);
    return std::any_of(words.begin(), words.end(), [&](const Word& word) {
        const bool potted = word.folded == "pot" && words.size() > 1;  // "a pot of cream" holds no leaves
        return knowledge.in_list(WordList::growing_word, word.folded) || potted;
    });
}

bool is_plenty(std::string_view line, const Knowledge& knowledge) {
    const auto words = words_of(line);
    for (std::size_t first = 0; first < words.size(); ++first)
        for (std::size_t last = std::min(words.size(), first + 3); last > first; --last)
            if (knowledge.in_list(WordList::stock_plenty, fold(phrase(words, first, last)))) return true;
    return false;
}

bool slip_of_the_pen(const Error& error, std::string_view written, const Knowledge& knowledge) {
    const auto words = words_of(written);
    const auto means_itself = [&](const std::string& said) {  // mango pickle is no slip for pickled mango
        return knowledge.in_list(WordList::takes_its_kind, said) || knowledge.in_list(WordList::other_food, said);
    };
    return std::any_of(error.hints.begin(), error.hints.end(), [&](const std::string& hint) {
        const std::string name = fold(hint);
        const std::size_t limit = slip_limit(name), count = words_of(name).size();
        for (std::size_t first = 0; first + count <= words.size(); ++first) {
            const std::string said = fold(phrase(words, first, first + count));
            // "Lebanese cucumber" has no slip in it.
            if (said != name && !means_itself(said) && edit_distance(said, name, limit) <= limit) return true;
        }
        return false;
    });
}

}  // namespace standin
