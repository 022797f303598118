#include "formula/line/kept_days.hpp"

#include <algorithm>
#include <optional>
#include <vector>

#include "formula/lexer/cursor.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/lexer/listed_word.hpp"
#include "formula/lexer/number_text.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

constexpr double most_days_raw = 2, most_days_cooked = 4;  // foodsafety-gov-cold-storage

using KeptWords = std::vector<Word>;

bool in_list(const Word& word, WordList list, const Knowledge& knowledge) {
    return knowledge.in_list(list, word.folded) || knowledge.in_list_as_written(list, word.folded);
}

template <class Such>
bool says_one(const KeptWords& words, WordList list, const Knowledge& knowledge, Such such) {
    return std::any_of(words.begin(), words.end(), [&](const Word& word) { return such(word) && in_list(word, list, knowledge); });
}

bool says_one(const KeptWords& words, WordList list, const Knowledge& knowledge) {
    return says_one(words, list, knowledge, [](const Word&) { return true; });
}

// Days where a number of them starts at a word, the most of a range; a number of another tongue is at least three.
std::optional<double> days_at(std::string_view text, const KeptWords& words, std::size_t at, const Knowledge& knowledge) {
    constexpr double least_of_several = 3;
    Cursor cursor(text, words[at].begin);
    if (const auto number = number_at(cursor)) {
        cursor.space();
        cursor.eat("-");
        if (eat_listed(cursor, WordList::day_word, knowledge)) return number->band.high;
        return std::nullopt;
    }
    const bool several = knowledge.in_list(WordList::three_or_more, words[at].folded);
    if (several && at + 1 < words.size() && in_list(words[at + 1], WordList::day_word, knowledge)) return least_of_several;
    return std::nullopt;
}

bool is_cooking(const Word& word, const Knowledge& knowledge) {
    return in_list(word, WordList::cooking_word, knowledge) || in_list(word, WordList::cooked_state, knowledge);
}

// Whether a word of cooking is of what comes later: "before you fry them", "until frying".
bool comes_later(const KeptWords& words, std::size_t at, const Knowledge& knowledge) {
    constexpr std::size_t reach = 3;  // words
    for (std::size_t back = 1; back <= std::min(reach, at); ++back)
        if (in_list(words[at - back], WordList::not_cooked_yet, knowledge)) return true;
    return false;
}

// What stands last before the days, or behind them in their clause, tells whether it is cooked: "raw 2 days, cooked 4 days".
bool cooked_when_kept(const KeptWords& words, std::size_t days, bool cooked_before, const Knowledge& knowledge) {
    bool cooked = cooked_before;
    for (std::size_t at = 0; at < words.size() && (at < days || words[at].segment == words[days].segment); ++at) {
        if (is_cooking(words[at], knowledge)) cooked = !comes_later(words, at, knowledge);
        else if (in_list(words[at], WordList::not_cooked_yet, knowledge)) cooked = cooked && at > days;
    }
    return cooked;
}

// The links are cooked in it: neither a piece to taste nor the leaves.
bool cooks_the_links(std::string_view sentence, const Knowledge& knowledge) {
    const KeptWords words = words_of(sentence);
    if (!says_one(words, WordList::mass_word, knowledge) && !says_one(words, WordList::core_word, knowledge)) return false;
    if (says_one(words, WordList::test_piece, knowledge)) return false;
    for (std::size_t at = 0; at < words.size(); ++at)
        if (is_cooking(words[at], knowledge) && !comes_later(words, at, knowledge)) return true;
    return false;
}

}  // namespace

KeptDays kept_days(std::string_view sentence, std::string_view before, const Knowledge& knowledge) {
    KeptDays told;
    const KeptWords words = words_of(sentence);
    if (!says_one(words, WordList::keeps_word, knowledge)) return told;
    if (says_one(words, WordList::may_stand_warm, knowledge) && !says_one(words, WordList::mass_word, knowledge)) {
        told.kept = KeptFor::long_enough;  // "the spice blend keeps 30 days"
        return told;
    }
    const bool cooked_before = cooks_the_links(before, knowledge);
    for (std::size_t at = 0; at < words.size(); ++at) {
        const auto days = days_at(sentence, words, at, knowledge);
        if (!days) continue;
        const auto same_clause = [&](const Word& word) { return word.segment == words[at].segment; };
        const bool frozen = says_one(words, WordList::frozen_state, knowledge, same_clause);
        const bool cooked = !frozen && cooked_when_kept(words, at, cooked_before, knowledge);
        told.cooked = told.cooked || cooked;
        if (!frozen && *days > (cooked ? most_days_cooked : most_days_raw)) told.kept = KeptFor::too_long;
        else if (told.kept == KeptFor::not_said) told.kept = KeptFor::long_enough;
    }
    if (told.kept == KeptFor::not_said && says_one(words, WordList::frozen_state, knowledge) &&
        !says_one(words, WordList::rest_word, knowledge))
        told.kept = KeptFor::long_enough;
    return told;
}

}  // namespace standin
