#include "formula/food/unknown_word.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <string>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "formula/food/likeness.hpp"
#include "formula/food/name_text.hpp"
#include "formula/lexer/measures.hpp"
#include "formula/words/line_asides.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/records/tissue.hpp"
#include "knowledge/records/word_list.hpp"
#include "knowledge/words/hazard_text.hpp"

namespace standin {
namespace {

constexpr std::size_t shortest_name = 3;  // letters: shorter ones join or deny
constexpr std::size_t long_word = 8;      // letters: two of them may be slips. Judgement

bool opens_with_capital(const Word& word) { return std::isupper(static_cast<unsigned char>(word.raw.front())) != 0; }

// "Jim's" is a name too.
bool of_letters_only(const Word& word) {
    std::string_view letters = word.raw;
    if (letters.ends_with("'s")) letters.remove_suffix(2);
    return word.folded.size() >= shortest_name && std::all_of(letters.begin(), letters.end(), [](char c) {
               return std::isalpha(static_cast<unsigned char>(c)) != 0 || static_cast<unsigned char>(c) >= 0x80;
           });
}

bool ends_in_any(const std::string& word, WordList list, const Knowledge& knowledge) {
    const auto& ends = knowledge.listed(list);
    return std::any_of(ends.begin(), ends.end(), [&](const std::string& end) { return word.ends_with(end); });
}

// What was done to it or how it is, in the tongues of the lexicon: "soured", "turning", "vergoren", "andato", "passé", and "whiffy".
bool ends_as_what_was_done(const Word& word, const Knowledge& knowledge) {
    constexpr std::size_t long_from = 5, participle_from = 7;  // letters
    const std::string& folded = word.folded;
    if (ends_in_any(word.raw, WordList::accented_ending_of_state, knowledge)) return true;
    if (folded.size() < long_from) return folded.ends_with("y");
    if (folded.size() >= participle_from && ends_in_any(folded, WordList::participle_end, knowledge)) {
        const auto& starts = knowledge.listed(WordList::participle_start);
        if (std::any_of(starts.begin(), starts.end(), [&](const std::string& start) { return folded.starts_with(start); })) return true;
    }
    return ends_in_any(folded, WordList::ending_of_state, knowledge);
}

bool is_denial(const Word& word, const Knowledge& knowledge) {
    const auto& denials = knowledge.records().lexicon.denials;
    const std::string folded = hazard_fold(word.raw);
    return contains(denials.before, folded) || contains(denials.after, folded) || knowledge.in_list(WordList::stock_none, word.folded) ||
           knowledge.in_list(WordList::stock_no_abroad, word.folded) || knowledge.in_list(WordList::stock_none_after, word.folded);
}

// A word of harm, of warning, of exclusion or of what a packet holds, or one slip of the pen away from one.
bool may_be_harm(const Word& word, const Knowledge& knowledge) {
    const auto& lexicon = knowledge.records().lexicon;
    const std::string folded = hazard_fold(word.raw);
    return contains(lexicon.joins, folded) || fits_any(lexicon.holds, folded) || fits_any(lexicon.handles, folded) ||
           is_denial(word, knowledge) || !hazards_in(hazard_text(word.raw), lexicon).empty() || !near_danger(word.raw, knowledge).empty() ||
           knowledge.in_list(WordList::never_aside, word.folded);
}

// A food, a form, a measure, something done to it: it means more than a name.
bool means_more(const Word& word, const Knowledge& knowledge) {
    return changes_food(word.folded, knowledge) || names_a_kind(word.folded, knowledge) ||
           knowledge.in_list(WordList::another_kind, word.folded) || knowledge.in_list(WordList::takes_its_kind, word.folded) ||
           knowledge.in_list(WordList::other_food, word.folded) || knowledge.in_list(WordList::no_slip, word.folded) ||
           unit_named(word.folded) || known_ingredient(word.raw, knowledge) || knowledge.ingredient_meant(word.raw) ||
           knowledge.preparation_named(word.raw);
}

// One or two letters from the name of a food, of what is done to it, or of a word that changes it: more likely a slip for that.
bool is_near_a_word(const Word& word, std::size_t long_from, const Knowledge& knowledge) {
    const auto near = knowledge.words_near(word.folded, word.folded.size() >= long_from ? 2 : 1);
    return std::any_of(near.begin(), near.end(), [&](const std::string& meant) {
        return knowledge.ingredient_named(meant) || knowledge.ingredient_meant(meant) || knowledge.preparation_named(meant) ||
               changes_food(meant, knowledge) || names_a_kind(meant, knowledge) || knowledge.in_list(WordList::never_aside, meant);
    });
}

// Each sort of them has dangers of its own: mushrooms, and salts but for those named by where they come from.
bool is_never_of_unknown_sort(const Ingredient& food) {
    return food.tissue == Tissue::fungus || food.family == "mushrooms-and-seaweeds" ||
           (food.family == "salts" && food.id != "kosher-salt" && food.id != "sea-salt");
}

// Of these a word in small letters may name the sort; of meat, fish, milk and what is bought ready it may tell of the state.
bool is_plant_food(const Ingredient& food) {
    constexpr std::array<std::string_view, 9> families{"leaf-greens", "herbs",  "fresh-chiles", "vegetables",    "sour-fruit",
                                                       "alliums",     "spices", "dried-chiles", "nuts-and-seeds"};
    return !food.meat && !is_each_its_own(food) && contains(families, std::string_view(food.family));
}

bool is_small_name_of_plant(const Word& word, const BesideFood& beside, const Knowledge& knowledge) {
    constexpr std::size_t shortest = 4;  // letters, judgement
    return beside.certain && is_plant_food(beside.food) && word.folded.size() >= shortest && !ends_as_what_was_done(word, knowledge) &&
           !is_near_a_word(word, long_word, knowledge) && knowledge.nearest_preparations(word.raw).empty();
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

// "250 g Quillo spinach", "terere amaranth", "Big Rock kosher salt"; but "X butter" is another food, and "tarte of spinach" too.
bool is_name_before(const std::vector<Word>& words, std::size_t i, std::size_t last, const BesideFood& beside, const Knowledge& knowledge) {
    const Word& word = words[i];
    const bool capital = opens_with_capital(word);
    std::size_t own = i + 1;  // a name of two words
    while (own < last && opens_with_capital(words[own])) ++own;
    if (own == last && capital && is_common_salt(words, last)) return true;
    const bool of_a_place =
        capital && beside.food.family == "dairy-and-egg" && belongs(beside.food, "ripens", knowledge);  // "Vermont cheddar"
    if (is_each_its_own(beside.food) && !beside.food.meat && !of_a_place) return false;
    if (last >= words.size() || word.segment != words[last].segment) return false;
    for (std::size_t at = i + 1; at < last; ++at)  // "dandelion and chicory", "tarte of spinach"
        if (words[at].folded == "of" || knowledge.in_list(WordList::content_join, words[at].folded)) return false;
    // A capital that neither opens the line nor goes on in the name.
    const bool a_name = capital && word.begin > 0 && !opens_with_capital(words[last]);
    if (is_near_a_word(word, a_name ? std::string::npos : long_word, knowledge) || word.folded.ends_with("ed")) return false;
    std::size_t head = last;
    while (head + 1 < words.size() && words[head + 1].segment == words[last].segment && knowledge.knows_word(words[head + 1].folded))
        ++head;
    const bool described = capital || ends_in_any(word.folded, WordList::ending_of_adjective, knowledge);
    if (beside.food.meat)
        return names_its_animal(words, last, beside.food) && (described || (beside.certain && !ends_as_what_was_done(word, knowledge)));
    const bool told_kind = capital && head > last;  // of a "Marvol butter" nobody knows the kind, of a "Marvol wine vinegar" it is told
    if (knowledge.in_list(WordList::takes_its_kind, words[head].folded) && !told_kind) return false;
    return described || is_small_name_of_plant(word, beside, knowledge);
}

// "spinach Matador", "perejil gigante"; but of "spinach borek" the last word is the food.
bool is_name_behind(const std::vector<Word>& words, std::size_t i, std::size_t first, const BesideFood& beside,
                    const Knowledge& knowledge) {
    const Word &word = words[i], &name = words[first - 1];
    if (!beside.certain || is_never_of_unknown_sort(beside.food) || (is_each_its_own(beside.food) && !beside.food.meat)) return false;
    const bool told_kind = first > 1 && knowledge.ingredient_named(phrase(words, first - 2, first));  // "pine nut"
    if (word.segment != name.segment || (!told_kind && knowledge.in_list(WordList::takes_its_kind, name.folded))) return false;
    if (knowledge.in_list(WordList::content_join, words[i - 1].folded)) return false;
    const bool small = beside.adjective_behind && is_small_name_of_plant(word, beside, knowledge);
    return small || (opens_with_capital(word) && !opens_with_capital(name) && !beside.nouns_have_capitals);
}

// "Alpha" in ", from Alpha", "kadaka" in brackets: nothing that the food is with or in.
bool is_name_apart(const std::vector<Word>& words, std::size_t i, std::size_t first, const BesideFood& beside, const Knowledge& knowledge) {
    if (is_never_of_unknown_sort(beside.food)) return false;
    const Word& word = words[i];
    const std::string before = i > first ? words[i - 1].folded : std::string();
    if (knowledge.in_list(WordList::content_join, before)) return false;
    if (opens_with_capital(word) && !beside.nouns_have_capitals) return i > first || !ends_as_what_was_done(word, knowledge);
    if (knowledge.in_list(WordList::names_a_sort, before)) return true;
    if (knowledge.in_list(WordList::remark_source, before) || contains(knowledge.records().lexicon.joins, hazard_fold(before)))
        return false;
    return is_small_name_of_plant(word, beside, knowledge);
}

}  // namespace

bool may_tell_of_state(std::string_view word, const Knowledge& knowledge) {
    const std::string said = hazard_fold(word);
    const auto& listed = knowledge.listed(WordList::tells_of_state);
    return std::any_of(listed.begin(), listed.end(), [&](const std::string_view stem) {
        if (stem.starts_with('*')) return said.ends_with(hazard_fold(stem.substr(1)));
        return stem.ends_with('*') ? said.starts_with(hazard_fold(stem.substr(0, stem.size() - 1))) : said == hazard_fold(stem);
    });
}

bool is_sentence(const std::vector<Word>& words, const Knowledge& knowledge) {
    return std::any_of(words.begin(), words.end(), [&](const Word& word) {
        return knowledge.in_list(WordList::remark_verb, word.folded) || is_denial(word, knowledge);
    });
}

bool is_mere_name(const std::vector<Word>& words, std::size_t i, std::size_t first, std::size_t last, Stands stands,
                  const BesideFood& beside, const Knowledge& knowledge) {
    const Word& word = words[i];
    if (!of_letters_only(word) || may_be_harm(word, knowledge) || means_more(word, knowledge)) return false;
    const bool a_name = stands == Stands::before && opens_with_capital(word) && i > 0 && !beside.nouns_have_capitals;
    if (!a_name && may_tell_of_state(word.raw, knowledge)) return false;
    if (stands == Stands::before) return is_name_before(words, i, last, beside, knowledge);
    if (stands == Stands::behind) return is_name_behind(words, i, first, beside, knowledge);
    return is_name_apart(words, i, first, beside, knowledge);
}

}  // namespace standin
