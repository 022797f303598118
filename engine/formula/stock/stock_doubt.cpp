#include "formula/stock/stock_doubt.hpp"

#include <algorithm>
#include <array>

#include "core/names.hpp"
#include "formula/food/likeness.hpp"
#include "formula/food/name_text.hpp"
#include "formula/hazards/hazards.hpp"
#include "formula/lexer/digits.hpp"
#include "formula/lexer/line_words.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

constexpr std::size_t longest_warning = 4, longest_food = 3;  // words

// "gone" in "gone to seed" does not say that it is not there.
bool within_idle_phrase(const std::vector<Word>& words, std::size_t first, std::size_t last, const Knowledge& knowledge) {
    for (std::size_t from = first < 2 ? 0 : first - 2; from <= first; ++from)
        for (std::size_t to = std::min(words.size(), last + 2); to >= last && to > 0; --to)
            if (to - from > last - first && knowledge.in_list(WordList::passed_over, fold(phrase(words, from, to)))) return true;
    return false;
}

bool excludes_or_warns(const std::vector<Word>& words, const Knowledge& knowledge) {
    constexpr std::array lists{WordList::never_aside, WordList::stock_none, WordList::stock_no_abroad, WordList::stock_none_after};
    for (std::size_t first = 0; first < words.size(); ++first)
        for (std::size_t last = first + 1; last <= std::min(words.size(), first + longest_warning); ++last) {
            const std::string said = fold(phrase(words, first, last));
            if (within_idle_phrase(words, first, last, knowledge)) continue;
            if (only_digits(said)) continue;  // "0" is one of them
            if (std::any_of(lists.begin(), lists.end(), [&](WordList list) { return knowledge.in_list(list, said); })) return true;
        }
    return false;
}

bool names_a_danger(std::string_view written, const std::vector<Word>& words, const Knowledge& knowledge) {
    for (std::size_t first = 0; first < words.size(); ++first)
        for (std::size_t last = first + 1; last <= std::min(words.size(), first + longest_food); ++last) {
            const auto* food = known_ingredient(phrase(words, first, last), knowledge);
            if (!food) continue;
            const Line line{food->id, {1, 1, 1}, {}, false, false, std::nullopt, ""};
            if (danger_of_food(written, line, knowledge, true)) return true;
        }
    return false;
}

}  // namespace

bool warns_or_excludes(std::string_view written, const Knowledge& knowledge) { return excludes_or_warns(words_of(written), knowledge); }

bool never_set_aside_but_for_looks(std::string_view written, const Knowledge& knowledge) {
    const auto words = words_of(written);
    return excludes_or_warns(words, knowledge) || names_a_danger(written, words, knowledge);
}

bool never_set_aside(std::string_view written, const Knowledge& knowledge) {
    if (danger_in(written, knowledge) || danger_beside(written, knowledge) || nearly_refused(written, knowledge)) return true;
    const auto words = words_of(written);
    const auto means_else = [&](const Word& word) {  // "forse" is no slip for a horse, "beans" none for bears and "brown" none for blown
        return knowledge.in_list(WordList::stock_doubt, word.folded) || knowledge.in_list(WordList::dark_colour, word.folded) ||
               kind_named(word.raw, knowledge) || knowledge.preparation_named(word.raw);
    };
    const bool near = std::any_of(words.begin(), words.end(),
                                  [&](const Word& word) { return !means_else(word) && !near_danger(word.raw, knowledge).empty(); });
    return near || excludes_or_warns(words, knowledge) || names_a_danger(written, words, knowledge);
}

bool harms_nobody_aside(std::string_view written, const Knowledge& knowledge) {
    if (only_looks_alike(written, knowledge) && !never_set_aside_but_for_looks(written, knowledge)) return true;
    return (only_asks_which(written, knowledge) || only_for_baking(written, knowledge)) && !warns_or_excludes(written, knowledge);
}

}  // namespace standin
