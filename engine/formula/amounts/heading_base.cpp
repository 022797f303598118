#include "formula/amounts/heading_base.hpp"

#include <algorithm>
#include <cmath>

#include "core/names.hpp"
#include "formula/amounts/process_text.hpp"
#include "formula/lexer/digits.hpp"
#include "formula/lexer/line_words.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

// "a" is "one" in English; "à", and "a" before digits, may be what amounts go with.
bool is_article(const Word& word) { return word.raw == "a" || word.raw == "A"; }

struct BaseFound {
    Per per;
    std::size_t first = 0, last = 0;  // words
};

// "per kg", "pro 1 kg", "for each pound", "au kilo" at word `first`.
std::optional<BaseFound> base_at(std::string_view text, const std::vector<Word>& words, std::size_t first, bool seasoning,
                                 const Knowledge& knowledge) {
    const auto said = [&](WordList list, std::size_t at) { return at < words.size() && knowledge.in_list(list, words[at].folded); };
    std::size_t next = first + 1;
    const bool each = said(WordList::each, next);
    if (!said(WordList::per, first) && !(said(WordList::for_a_base, first) && (seasoning || each))) return std::nullopt;
    while (said(WordList::each, next)) ++next;
    if (next >= words.size()) return std::nullopt;
    Cursor cursor(text, words[next].begin);
    if (is_article(words[first]) && !each && !cursor.digit()) return std::nullopt;  // "salt - a scant ounce"
    const auto number = number_at(cursor);
    const auto unit = unit_at(cursor);
    if (!unit || unit->unit->dimension != Dimension::mass) return std::nullopt;
    BaseFound found{{(number ? number->band.mid : 1.0) * unit->unit->size.mid, Whole::unsaid}, first, next};
    while (found.last < words.size() && words[found.last].begin < cursor.at()) ++found.last;
    return found;
}

Whole whole_of(const std::vector<Word>& words, std::size_t from, const Knowledge& knowledge) {
    for (; from < words.size(); ++from) {
        const std::string& word = words[from].folded;
        if (knowledge.in_list(WordList::whole_meat, word)) return Whole::meat;
        if (knowledge.in_list(WordList::whole_batch, word)) return Whole::batch;
    }
    return Whole::unsaid;
}

}  // namespace

std::optional<Per> heading_base(std::string_view line, const Knowledge& knowledge) {
    std::string text(line);
    const auto open = text.find('('), close = text.find(')', open);
    const auto before = words_of(text.substr(0, open));
    const bool based = std::any_of(before.begin(), before.end(), [&](const Word& word) {
        return knowledge.in_list(WordList::per, word.folded) || knowledge.in_list(WordList::for_a_base, word.folded);
    });
    if (based && close != std::string::npos && has_digit(text.substr(open, close - open)))  // "per 1000 g (1 kg) of meat"
        text.replace(open, close - open + 1, close - open + 1, ' ');
    std::replace_if(
        text.begin(), text.end(), [](char c) { return std::string_view("*_=~#|()[]:,;").find(c) != std::string_view::npos; }, ' ');
    const auto words = words_of(text);
    const auto any = [&](WordList list) {
        return std::any_of(words.begin(), words.end(), [&](const Word& word) { return knowledge.in_list(list, word.folded); });
    };
    const bool seasoning = any(WordList::seasoning_heading), makes = any(WordList::yield_heading);
    for (std::size_t first = 0; first < words.size(); ++first) {
        auto found = base_at(text, words, first, seasoning, knowledge);
        if (!found) continue;
        for (std::size_t i = 0; i < words.size(); ++i) {
            if (i >= found->first && i < found->last) continue;
            const bool told =
                knowledge.in_list(WordList::seasoning_heading, words[i].folded) || knowledge.in_list(WordList::heading, words[i].folded) ||
                knowledge.in_list(WordList::whole_meat, words[i].folded) || knowledge.in_list(WordList::whole_batch, words[i].folded) ||
                knowledge.in_list(WordList::heading_word, words[i].folded);
            if (has_digit(words[i].raw) || !told) return std::nullopt;
        }
        if (makes && !seasoning) return std::nullopt;
        found->per.of = whole_of(words, found->last, knowledge);
        if (found->per.of == Whole::unsaid) found->per.of = Whole::meat;
        return found->per;
    }
    return std::nullopt;
}

Reason base_reason(ReasonKind kind, const Per& base) {
    Reason reason = make_reason(kind, {{"per", {}, base.grams, "g"}});
    reason.role = base.of == Whole::batch ? "batch" : "meat";
    return reason;
}

std::string base_text(const Per& base) {
    constexpr double gram_limit = 1000, close = 0.5;
    const double pounds = base.grams / grams_a_pound;
    const bool in_pounds = base.grams != gram_limit && std::abs(pounds - std::round(pounds)) * grams_a_pound < close;
    const std::string amount = in_pounds                  ? plain_number(std::round(pounds)) + " lb"
                               : base.grams >= gram_limit ? plain_number(base.grams / gram_limit) + " kg"
                                                          : plain_number(base.grams) + " g";
    return amount + (base.of == Whole::batch ? " of batch" : " of meat");
}

}  // namespace standin
