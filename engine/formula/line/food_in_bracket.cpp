#include "formula/line/food_in_bracket.hpp"

#include <algorithm>
#include <array>
#include <string>
#include <vector>

#include "core/names.hpp"
#include "formula/food/name_text.hpp"
#include "formula/hazards/hazards.hpp"
#include "formula/lexer/digits.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/line/line_text.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/records/word_list.hpp"
#include "knowledge/words/hazard_text.hpp"

namespace standin {
namespace {

constexpr std::size_t longest_phrase_said = 4;  // words

// A word of warning, exclusion, joining or contact makes of the bracket something else than a name.
bool says_more_than_a_name(std::string_view text, const Knowledge& knowledge) {
    constexpr std::array lists{WordList::never_aside, WordList::stock_none, WordList::stock_no_abroad, WordList::stock_none_after,
                               WordList::stock_doubt};
    const auto words = words_of(text);
    if (words.empty() || knowledge.ingredient_named(phrase(words, 0, words.size()))) return false;
    for (std::size_t first = 0; first < words.size(); ++first)
        for (std::size_t last = first + 1; last <= std::min(words.size(), first + longest_phrase_said); ++last) {
            const std::string said = fold(phrase(words, first, last));
            if (std::any_of(lists.begin(), lists.end(), [&](WordList list) { return knowledge.in_list(list, said); })) return true;
        }
    return false;
}

bool joins_or_touches(std::string_view text, const Knowledge& knowledge) {
    const auto& lexicon = knowledge.records().lexicon;
    const auto words = hazard_text(text).words;
    return std::any_of(words.begin(), words.end(), [&](const std::string& word) {
        return fits_any(lexicon.holds, word) || fits_any(lexicon.joins, word) || word == "or" || word == "like" ||
               knowledge.in_list(WordList::contact_word, fold(word));
    });
}

// Foods that words of the name are called by: those of another sort tell of another food than the bracket.
bool names_another_sort(const std::vector<Word>& words, std::size_t first, std::size_t last, const Ingredient& food,
                        const Knowledge& knowledge) {
    for (std::size_t from = first; from < last; ++from)
        for (std::size_t end = last; end > from; --end) {
            if (end == from + 1 && knowledge.in_list(WordList::takes_its_kind, words[from].folded)) continue;  // "zorb sauce (soy sauce)"
            const std::string name = phrase(words, from, end);
            const auto* known = known_ingredient(name, knowledge);
            if (!known) known = knowledge.ingredient_meant(name);
            if (known && (known->meat || known->family != food.family || known->allergens != food.allergens)) return true;
        }
    return false;
}

bool is_plain(const Reason& told) {
    constexpr std::array doubtful{ReasonKind::passed_over,  ReasonKind::passed_unknown, ReasonKind::slip_mended,
                                  ReasonKind::first_of_two, ReasonKind::likened,        ReasonKind::usual_by_spoon};
    return std::find(doubtful.begin(), doubtful.end(), told.kind) == doubtful.end();
}

// The one food that the bracket names and says no more of than what is done to it.
const Ingredient* food_named(std::string_view inside, const Knowledge& knowledge) {
    const auto read = read_line("100 g " + std::string(inside), Origin("", {1, 1}), knowledge);
    if (!read || !std::all_of(read->doubts.begin(), read->doubts.end(), [](const LineDoubt& doubt) { return is_plain(doubt.what); }))
        return nullptr;
    return knowledge.ingredient(read->line.ingredient);
}

// Where the other name stands, with its bracket or from its comma on, and what is left of it without "also called".
struct OtherName {
    std::size_t open = 0, close = 0;
    std::string_view inside;
};

// What stands behind "also called"; all of it where it does not begin so.
std::string_view behind_opening(std::string_view said, const Knowledge& knowledge) {
    const auto words = words_of(said);
    for (std::size_t last = std::min(words.size(), longest_phrase_said); last > 0; --last)
        if (last < words.size() && knowledge.in_list(WordList::names_also, fold(phrase(words, 0, last))))
            return said.substr(words[last].begin);
    return said;
}

std::optional<OtherName> other_name(std::string_view line, const Knowledge& knowledge) {
    if (const auto open = line.find_first_of("(["); open != std::string_view::npos) {
        const auto close = line.find(line[open] == '(' ? ')' : ']', open);
        if (close == std::string_view::npos) return std::nullopt;
        return OtherName{open, close + 1, behind_opening(line.substr(open + 1, close - open - 1), knowledge)};
    }
    const auto comma = line.find(',');
    if (comma == std::string_view::npos) return std::nullopt;
    const auto close = std::min(line.find(',', comma + 1), line.size());
    const auto said = line.substr(comma + 1, close - comma - 1), inside = behind_opening(said, knowledge);
    if (inside.size() == said.size()) return std::nullopt;
    return OtherName{comma, close, inside};
}

}  // namespace

std::optional<Likeness> food_in_bracket(std::string_view line, const Knowledge& knowledge) {
    const auto found = other_name(line, knowledge);
    if (!found) return std::nullopt;
    const auto& [open, close, inside] = *found;
    const auto words = words_of(line);
    std::size_t last = 0;
    while (last < words.size() && words[last].begin < open) ++last;
    const std::size_t first = first_of_name(line, words, last, knowledge);
    if (first >= last || words[first].segment != words[last - 1].segment || words_of(inside).empty() || has_digit(inside))
        return std::nullopt;
    const std::string called = phrase(words, first, last);
    if (has_digit(called) || known_ingredient(called, knowledge) || knowledge.ingredient_meant(called) || kind_named(called, knowledge))
        return std::nullopt;
    for (const std::string_view said : {std::string_view(called), inside})
        if (says_more_than_a_name(said, knowledge) || danger_in(said, knowledge)) return std::nullopt;
    if (joins_or_touches(inside, knowledge)) return std::nullopt;
    const Ingredient* food = food_named(inside, knowledge);
    if (!food || names_another_sort(words, first, last, *food, knowledge) || nearly_refused(called, knowledge) ||
        refused_likeness(called, *food, knowledge))
        return std::nullopt;
    std::string named(line.substr(0, words[first].begin));
    named += inside;
    named += line.substr(close);
    return Likeness{called, std::move(named), true};
}

}  // namespace standin
