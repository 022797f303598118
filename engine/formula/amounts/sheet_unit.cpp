#include "formula/amounts/sheet_unit.hpp"

#include <algorithm>
#include <string>
#include <vector>

#include "formula/lexer/digits.hpp"
#include "formula/lexer/line_words.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

// "Gramm" and "grammi" too.
const Unit* mass_unit(const Word& word, const Knowledge& knowledge) {
    const Unit* unit = unit_named(word.folded);
    for (const auto& tongue : knowledge.tongues()) {
        if (unit) break;
        if (const auto* english = knowledge.english(tongue, word.folded)) unit = unit_named(*english);
    }
    return unit && unit->dimension == Dimension::mass ? unit : nullptr;
}

// "g/kg" as "g per kg", without the signs that stand around a heading.
std::string opened(std::string_view text) {
    std::string out;
    for (const char c : text)
        if (c == '/') out += " per ";
        else out += std::string_view("*_=~#|()[]:,;").find(c) != std::string_view::npos ? ' ' : c;
    return out;
}

struct Told {
    SheetUnit is;
    std::size_t first = 0, last = 0;  // words
};

// "g per kg", "g per 1 kg of meat" at word `i`.
std::optional<Told> rate_at(const std::string& text, const std::vector<Word>& words, std::size_t i, const Knowledge& knowledge) {
    const Unit* unit = mass_unit(words[i], knowledge);
    if (!unit || i + 2 >= words.size() || !knowledge.in_list(WordList::per, words[i + 1].folded)) return std::nullopt;
    std::size_t at = i + 2;
    while (at < words.size() && knowledge.in_list(WordList::each, words[at].folded)) ++at;
    if (at >= words.size()) return std::nullopt;
    Cursor cursor(text, words[at].begin);
    const auto number = number_at(cursor, false);
    const auto base = unit_at(cursor);
    if (!base || base->unit->dimension != Dimension::mass) return std::nullopt;
    Per per{(number ? number->band.mid : 1.0) * base->unit->size.mid, Whole::meat};
    while (at < words.size() && words[at].begin < cursor.at()) ++at;
    const std::size_t last = at;
    for (std::size_t k = at; k < std::min(words.size(), at + 3); ++k) {
        if (knowledge.in_list(WordList::whole_batch, words[k].folded)) per.of = Whole::batch;
        if (knowledge.in_list(WordList::whole_meat, words[k].folded) || knowledge.in_list(WordList::whole_batch, words[k].folded)) break;
    }
    return Told{{unit, per}, i, last};
}

bool leads_unit(const Word& word) { return word.folded == "in" || word.folded == "en" || word.folded == "em" || word.folded == "as"; }

// The one unit of words that all may stand in such a heading; null where another word stands there, or another unit.
const Unit* only_unit(const std::vector<Word>& words, const Knowledge& knowledge) {
    const Unit* unit = nullptr;
    for (const auto& word : words) {
        if (const Unit* one = mass_unit(word, knowledge)) {
            if (unit && unit != one) return nullptr;
            unit = one;
            continue;
        }
        const bool told = leads_unit(word) || knowledge.in_list(WordList::unit_heading, word.folded) ||
                          knowledge.in_list(WordList::heading_word, word.folded) ||
                          knowledge.in_list(WordList::column_amount, word.folded) || knowledge.in_list(WordList::column_unit, word.folded);
        if (!told) return nullptr;
    }
    return unit;
}

std::vector<std::string> brackets_of(std::string_view text) {
    std::vector<std::string> all;
    for (std::size_t open = text.find_first_of("(["); open != std::string_view::npos; open = text.find_first_of("([", open + 1)) {
        const std::size_t close = text.find_first_of(")]", open);
        if (close == std::string_view::npos) break;
        all.emplace_back(text.substr(open + 1, close - open - 1));
    }
    return all;
}

}  // namespace

std::optional<SheetUnit> unit_in_title(std::string_view title, const Knowledge& knowledge) {
    const std::string text = opened(title);
    const auto words = words_of(text);
    for (std::size_t i = 0; i + 2 < words.size(); ++i)
        if (const auto rate = rate_at(text, words, i, knowledge)) return rate->is;
    for (std::size_t i = 1; i < words.size(); ++i)
        if (const Unit* unit = mass_unit(words[i], knowledge); unit && leads_unit(words[i - 1])) return SheetUnit{unit};
    for (const auto& bracket : brackets_of(title))
        if (const Unit* unit = only_unit(words_of(opened(bracket)), knowledge)) return SheetUnit{unit};
    return std::nullopt;
}

std::optional<SheetUnit> unit_in_heading(std::string_view line, const Knowledge& knowledge) {
    const std::string text = opened(line);
    const auto words = words_of(text);
    for (std::size_t i = 0; i + 2 < words.size(); ++i) {
        const auto rate = rate_at(text, words, i, knowledge);
        if (!rate) continue;
        for (std::size_t k = 0; k < words.size(); ++k) {
            if (k >= rate->first && k < rate->last) continue;
            const auto& word = words[k].folded;
            const bool told = knowledge.in_list(WordList::seasoning_heading, word) || knowledge.in_list(WordList::heading, word) ||
                              knowledge.in_list(WordList::whole_meat, word) || knowledge.in_list(WordList::whole_batch, word) ||
                              knowledge.in_list(WordList::heading_word, word) || knowledge.in_list(WordList::unit_heading, word) ||
                              leads_unit(words[k]) || knowledge.in_list(WordList::column_amount, word);
            if (!told) return std::nullopt;
        }
        return rate->is;
    }
    if (has_digit(text)) return std::nullopt;
    const Unit* unit = only_unit(words, knowledge);
    return unit ? std::optional(SheetUnit{unit}) : std::nullopt;
}

}  // namespace standin
