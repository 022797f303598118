#include "formula/words/line_asides.hpp"

#include <algorithm>

#include "knowledge/records/word_list.hpp"

namespace standin {

bool opens_aside(const std::vector<Word>& words, std::size_t i, const Knowledge& knowledge) {
    const auto& word = words[i].folded;
    if (knowledge.in_list(WordList::aside, word)) return true;
    const auto next = [&](std::string_view wanted) { return i + 1 < words.size() && words[i + 1].folded == wanted; };
    const auto next_in = [&](WordList list) { return i + 1 < words.size() && knowledge.in_list(list, words[i + 1].folded); };
    return (word == "such" && next("as")) || (word == "or" && next_in(WordList::aside_behind_or)) ||
           (word == "to" && next_in(WordList::aside_behind_to));
}

bool changes_food(std::string_view folded, const Knowledge& knowledge) { return knowledge.in_list(WordList::changes_food, folded); }

bool tells_of_absence(const std::vector<Word>& words, std::size_t first, std::size_t last) {
    for (std::size_t i = first + 1; i < last; ++i)
        if (words[i].folded == "free" && words[first].folded != "not" && (i + 1 >= last || words[i + 1].folded != "range")) return true;
    return false;
}

bool names_a_kind(std::string_view folded, const Knowledge& knowledge) { return knowledge.in_list(WordList::names_kind, folded); }

namespace {

// "For" and, within a few words of the clause, one of the list; "to" and one of it at once.
std::string purpose_in(std::string_view line, WordList list, const Knowledge& knowledge) {
    constexpr std::size_t reach = 4;  // words
    const auto words = words_of(line);
    for (std::size_t i = 0; i < words.size(); ++i) {
        const std::size_t last = words[i].folded == "for" ? i + reach : words[i].folded == "to" ? i + 1 : i;
        for (std::size_t at = i + 1; at <= last && at < words.size() && words[at].segment == words[i].segment; ++at)
            if (knowledge.in_list(list, words[at].folded)) return "\"" + phrase(words, i, at + 1) + "\"";
    }
    return {};
}

}  // namespace

std::string outside_purpose(std::string_view line, const Knowledge& knowledge) {
    return purpose_in(line, WordList::outside_purpose, knowledge);
}

std::string coat_purpose(std::string_view line, const Knowledge& knowledge) { return purpose_in(line, WordList::coat_purpose, knowledge); }

}  // namespace standin
