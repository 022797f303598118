#include "formula/line/harmless.hpp"

#include <algorithm>
#include <array>
#include <cctype>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "formula/lexer/measures.hpp"
#include "formula/line/likeness.hpp"
#include "formula/line/line_asides.hpp"
#include "knowledge/hazard_text.hpp"

namespace standin {
namespace {

bool is_capital(const Word& word) { return std::isupper(static_cast<unsigned char>(word.raw.front())) != 0; }

// Short words join or deny, but for one with a capital.
bool is_plain_word(const Word& word) {
    const std::size_t shortest = is_capital(word) ? 3 : 4;  // letters
    return word.folded.size() >= shortest && std::all_of(word.raw.begin(), word.raw.end(), [](char c) {
               return std::isalpha(static_cast<unsigned char>(c)) != 0 || static_cast<unsigned char>(c) >= 0x80;
           });
}

bool may_hurt(const Word& word, const Knowledge& knowledge) {
    const auto& lexicon = knowledge.records().lexicon;
    const std::string folded = hazard_fold(word.raw);
    return contains(lexicon.joins, folded) || fits_any(lexicon.holds, folded) || fits_any(lexicon.handles, folded) ||
           contains(lexicon.denials.before, folded) || contains(lexicon.denials.after, folded) ||
           !hazards_in(hazard_text(word.raw), lexicon).empty() || !near_danger(word.raw, knowledge).empty();
}

// A food, something done to it, an amount, or nearly one of them: then it is no mere description.
bool means_something(const Word& word, bool a_name, const Knowledge& knowledge) {
    const std::size_t slip = word.folded.size() > 5 && !a_name ? 2 : 1;  // letters, judgement
    return changes_food(word.folded, knowledge) || names_a_kind(word.folded, knowledge) ||
           knowledge.in_list("takes-its-kind", word.folded) || knowledge.in_list("another-kind", word.folded) ||
           knowledge.in_list("no-slip", word.folded) || unit_named(word.folded) || knowledge.ingredient_named(word.raw) ||
           knowledge.ingredient_meant(word.raw) || knowledge.preparation_named(word.raw) ||
           !knowledge.words_near(word.folded, slip).empty();
}

bool ends_as_adjective(const std::string& word) {
    constexpr std::array<std::string_view, 13> endings{"ive",  "al",   "ish", "ous", "ful", "less", "ic",
                                                       "able", "ible", "ian", "ary", "ern", "esque"};
    return std::any_of(endings.begin(), endings.end(), [&](std::string_view end) { return word.ends_with(end); });
}

// The animal stands in the name itself, so that "heritage pork shoulder" stays pork.
bool names_its_animal(const std::vector<Word>& words, std::size_t from, const Ingredient& ingredient) {
    const std::string animal(spelling(ingredient.meat->species));
    return std::any_of(words.begin() + static_cast<std::ptrdiff_t>(from), words.end(),
                       [&](const Word& word) { return word.folded == animal; });
}

bool is_common_salt(const std::vector<Word>& words, std::size_t from) {
    return from + 1 < words.size() && words[from + 1].folded == "salt" && (words[from].folded == "kosher" || words[from].folded == "sea");
}

}  // namespace

bool is_harmless(const std::vector<Word>& words, std::size_t i, std::size_t first, std::size_t last, const LineContext& context,
                 const Ingredient& ingredient) {
    const auto& word = words[i];
    const auto& knowledge = context.knowledge;
    if (!is_plain_word(word) || may_hurt(word, knowledge)) return false;
    std::size_t own = i + 1;  // a name of two words: "Big Rock kosher salt"
    while (own < last && is_capital(words[own])) ++own;
    if (first == 0 && own == last && is_capital(word) && is_common_salt(words, last) && !knowledge.ingredient_named(word.raw) &&
        !knowledge.preparation_named(word.raw) && !changes_food(word.folded, knowledge) && !names_a_kind(word.folded, knowledge))
        return true;
    // "250 g Quillo spinach": a capital that neither opens the line nor goes on in the name.
    const bool a_name = is_capital(word) && word.begin > 0 && first == 0 && last < words.size() && !is_capital(words[last]);
    if (means_something(word, a_name, knowledge)) return false;
    // What is done to a food may change it: "sprouted", "fermented".
    if (word.folded.ends_with("ed") || (is_each_its_own(ingredient) && !ingredient.meat)) return false;
    if (first > 0) {  // a clause of one word
        const bool opens = words[i - 1].segment != word.segment, ends = i + 1 >= last || words[i + 1].segment != word.segment;
        return opens && ends && word.segment > words[first - 1].segment;
    }
    if (last >= words.size() || word.segment != words[last].segment) return false;
    std::size_t head = last;
    while (head + 1 < words.size() && words[head + 1].segment == words[last].segment && knowledge.knows_word(words[head + 1].folded))
        ++head;
    if (ingredient.meat) return names_its_animal(words, last, ingredient) && (is_capital(word) || ends_as_adjective(word.folded));
    const bool told_kind =
        is_capital(word) && head > last;  // of a "Marvol butter" nobody knows the kind, of a "Marvol wine vinegar" it is told
    if (knowledge.in_list("takes-its-kind", words[head].folded) && !told_kind) return false;
    return is_capital(word) || ends_as_adjective(word.folded);
}

}  // namespace standin
