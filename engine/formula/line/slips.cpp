#include "formula/line/slips.hpp"

#include <algorithm>
#include <array>
#include <cctype>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "formula/food/likeness.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/lexer/measures.hpp"
#include "knowledge/records/word_list.hpp"
#include "knowledge/words/hazard_text.hpp"

namespace standin {
namespace {

constexpr std::size_t shortest = 4, long_word = 7;  // letters, judgement
constexpr std::size_t most_slips = 4, most_ways = 32;
constexpr std::array<std::string_view, 36> unit_words{
    "bunch",    "clove", "teaspoon", "tablespoon", "ounce",  "pound", "gram",  "kilo",  "pinch", "handful", "sprig",  "stalk",
    "head",     "leaf",  "slice",    "stick",      "piece",  "quart", "pint",  "litre", "liter", "gallon",  "packet", "bottle",
    "kilogram", "knob",  "dash",     "rasher",     "fillet", "cube",  "sheet", "blade", "small", "about",   "tbsp",   "tsps"};

bool all_letters(const std::string& word) {
    return std::all_of(word.begin(), word.end(), [](char c) {
        return std::isalpha(static_cast<unsigned char>(c)) != 0 || c == '\'' || static_cast<unsigned char>(c) >= 0x80;
    });
}

bool same_letters(std::string a, std::string b) {
    std::sort(a.begin(), a.end());
    std::sort(b.begin(), b.end());
    return a == b;
}

bool is_word_known(const Word& word, const Knowledge& knowledge) {
    if (word.folded.size() < shortest || !all_letters(word.folded)) return true;
    if (knowledge.knows_word(word.folded) || unit_named(word.folded) || contains(unit_words, word.folded)) return true;
    constexpr std::array lists{WordList::vague,           WordList::aside,        WordList::changes_food, WordList::names_kind,
                               WordList::outside_purpose, WordList::coat_purpose, WordList::no_slip,      WordList::other_food,
                               WordList::tells_form,      WordList::heading};
    if (std::any_of(lists.begin(), lists.end(), [&](WordList list) { return knowledge.in_list(list, word.folded); })) return true;
    const auto& tongues = knowledge.tongues();
    return std::any_of(tongues.begin(), tongues.end(),
                       [&](const auto& tongue) { return knowledge.english(tongue, hazard_fold(word.raw)); });
}

// A short name with another letter in it is another food: bear and boar, moose and goose. The first letter is seldom slipped.
bool may_be_slip(const std::string& written, const std::string& meant, bool of_food = true) {
    if (written.front() != meant.front()) return false;
    if (same_letters(written, meant)) return true;
    constexpr std::size_t ending = 2;  // "sprouted" is done to something, and no slip for "sprout"
    if (written.size() >= meant.size() + ending && written.starts_with(meant)) return false;
    if (meant.size() >= written.size() + ending && meant.starts_with(written)) return false;
    return written.size() != meant.size() || written.size() >= (of_food ? long_word : shortest + 1);
}

std::size_t reach_of(const std::string& word) { return word.size() >= long_word ? 2 : 1; }

std::vector<std::string> all_near(const std::string& word, std::size_t limit, const Knowledge& knowledge) {
    auto near = knowledge.words_near(word, limit);
    for (const auto unit : unit_words)
        if (edit_distance(word, unit, limit) <= limit && !contains(near, unit)) near.emplace_back(unit);
    return near;
}

// "groundblack" as "ground black".
std::vector<std::string> parted(const std::string& word, const Knowledge& knowledge) {
    constexpr std::size_t least = 4;  // letters
    std::vector<std::string> ways;
    for (std::size_t at = least; at + least <= word.size(); ++at)
        if (knowledge.knows_word(word.substr(0, at)) && knowledge.knows_word(word.substr(at)))
            ways.push_back(word.substr(0, at) + " " + word.substr(at));
    return ways;
}

struct NearWord {
    std::string word;
    std::size_t edits = 0;
};

// The known words near one, the nearest first. "Clvoes" folds as a word in -oes does, so it is held against them with its e as well.
std::vector<NearWord> meant_by(const Word& word, const Knowledge& knowledge) {
    std::vector<std::string> forms{word.folded};
    std::string with_e(word.raw);
    std::transform(with_e.begin(), with_e.end(), with_e.begin(), [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    if (with_e.ends_with("es")) with_e.pop_back();
    if (with_e != word.folded) forms.push_back(with_e);
    std::vector<NearWord> all;
    constexpr std::size_t one_slip = 1;  // with two the word may as well be one that is not known
    for (const auto& form : forms)
        for (auto& near : all_near(form, one_slip, knowledge)) {
            const bool told = std::any_of(all.begin(), all.end(), [&](const NearWord& one) { return one.word == near; });
            const bool of_food = !knowledge.preparation_named(near) && !knowledge.in_list(WordList::cut, near) && !unit_named(near);
            const bool own = !of_food || knowledge.is_own_word(near);  // never out of one tongue into another
            if (!told && own && near.size() >= shortest && may_be_slip(form, near, of_food)) all.push_back({std::move(near), one_slip});
        }
    if (all.empty())
        for (auto& two : parted(word.folded, knowledge)) all.push_back({std::move(two), 1});
    return all;
}

}  // namespace

std::vector<WithoutSlips> without_slips(std::string_view line, const Knowledge& knowledge) {
    const auto words = words_of(line);
    std::vector<WithoutSlips> ways{{std::string(line), {}}};
    for (std::size_t i = words.size(); i-- > 0;) {  // from the end, so that places before it hold
        if (is_word_known(words[i], knowledge)) continue;
        if (!near_danger(words[i].raw, knowledge).empty()) return {};
        const auto meant = meant_by(words[i], knowledge);
        if (meant.empty() || ways.front().slips.size() == most_slips) return {};
        std::vector<WithoutSlips> longer;
        for (const auto& way : ways)
            for (const auto& one : meant) {
                const bool twice = (i > 0 && words[i - 1].folded == one.word) || (i + 1 < words.size() && words[i + 1].folded == one.word);
                if (twice || longer.size() == most_ways) continue;
                WithoutSlips next = way;
                next.line.replace(words[i].begin, words[i].end - words[i].begin, one.word);
                next.slips.insert(next.slips.begin(), {words[i].raw, one.word});
                next.edits += one.edits;
                longer.push_back(std::move(next));
            }
        ways = std::move(longer);
        if (ways.empty()) return {};
    }
    std::stable_sort(ways.begin(), ways.end(), [](const WithoutSlips& a, const WithoutSlips& b) { return a.edits < b.edits; });
    return ways.front().slips.empty() ? std::vector<WithoutSlips>() : ways;
}

std::string other_danger_near(const std::vector<Slip>& slips, const Ingredient& read, const Knowledge& knowledge) {
    for (const auto& slip : slips) {
        const std::string folded = fold(slip.written);
        for (const auto& word : all_near(folded, reach_of(folded), knowledge)) {
            const auto* other = knowledge.ingredient_named(word);
            if (!other) other = knowledge.ingredient_meant(word);
            if (!other || other == &read || word == slip.meant) continue;
            const bool animal = other->meat && (!read.meat || other->meat->species != read.meat->species);
            const bool allergen = std::any_of(other->allergens.begin(), other->allergens.end(),
                                              [&](const auto& one) { return !contains(read.allergens, one); });
            if (may_be_slip(folded, word) && (animal || allergen)) return other->names.front();
        }
    }
    return {};
}

}  // namespace standin
