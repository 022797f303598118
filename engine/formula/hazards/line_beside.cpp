#include "formula/hazards/line_beside.hpp"

#include <algorithm>
#include <cctype>
#include <string>
#include <vector>

#include "core/names.hpp"
#include "formula/hazards/hazards.hpp"
#include "formula/lexer/digits.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/lexer/measures.hpp"
#include "formula/lexer/number_text.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

using Text = std::string_view;

bool may_stand_before_casing(const Word& word, const Knowledge& knowledge) {
    const Unit* unit = unit_named(word.folded);
    return knowledge.in_list(WordList::casing_beside, word.folded) || std::isdigit(static_cast<unsigned char>(word.raw.front())) != 0 ||
           word.folded.find_first_not_of("/%. ") == std::string::npos ||
           (unit && (unit->dimension == Dimension::mass || is_container(*unit)));
}

// "2.5 m of hog skins": skin by the length.
bool tells_length(const std::vector<Word>& words, const Knowledge& knowledge) {
    return std::any_of(words.begin(), words.end(), [&](const Word& word) {
        const auto unit = word.folded.find_first_not_of("0123456789.,/");
        return unit != std::string::npos && knowledge.in_list(WordList::skin_by_length, Text(word.folded).substr(unit));
    });
}

// Where the casing is named; the number of words where it is not. "Casings removed" is said of bought sausage.
std::size_t casing_at(const std::vector<Word>& words, const Knowledge& knowledge) {
    for (std::size_t i = 0; i < words.size(); ++i) {
        const auto& word = words[i].folded;
        const bool skin = word == "skin" && i > 0 &&
                          (knowledge.in_list(WordList::skin_that_holds_sausage, words[i - 1].folded) || tells_length(words, knowledge));
        const bool gut = i > 0 && knowledge.in_list(WordList::gut, word) && may_stand_before_casing(words[i - 1], knowledge) &&
                         !has_digit(words[i - 1].folded) && unit_named(words[i - 1].folded) == nullptr &&
                         (i + 1 == words.size() || words[i + 1].folded != "bean");
        if (word != "casing" && !skin && !gut) continue;
        const bool gone = i + 1 < words.size() && knowledge.in_list(WordList::behind_a_bought_skin, words[i + 1].folded);
        return gone ? words.size() : i;
    }
    return words.size();
}

bool is_casing(const std::vector<Word>& words, const Knowledge& knowledge) {
    const std::size_t at = casing_at(words, knowledge);
    return at < words.size() && std::all_of(words.begin(), words.begin() + static_cast<std::ptrdiff_t>(at),
                                            [&](const Word& word) { return may_stand_before_casing(word, knowledge); });
}

// "1 slow cooker", but not "tomatoes from the dehydrator".
bool is_kitchen_goods(const std::vector<Word>& words, const Knowledge& knowledge) {
    const auto names_food = [&](std::size_t first, std::size_t last) {
        return first < last && !foods_named(phrase(words, first, last), 3, knowledge).empty();
    };
    for (std::size_t i = 0; i < words.size() && words[i].segment == 0; ++i)
        for (std::size_t end = i + 1; end <= std::min(words.size(), i + 3); ++end)
            if (knowledge.in_list(WordList::kitchen_goods, fold(phrase(words, i, end)))) return !names_food(0, i);
    return false;
}

bool weighs_something(const std::vector<Word>& words, Text line) {
    return std::any_of(words.begin(), words.end(), [&](const Word& word) {
        Cursor cursor(line, word.begin);
        if (!number_at(cursor, false)) return false;
        cursor.space();
        if (cursor.eat("%")) return true;
        if (cursor.eat("°")) return false;
        const auto unit = unit_at(cursor);
        return unit && unit->unit->dimension != Dimension::count;
    });
}

// "Mix 4 min, 2 C, rest overnight", "grind at 2 C": degrees, where a sentence of the method has minutes too, or a word of heat before them.
std::string without_degrees(const std::vector<Word>& words, Text line, const Knowledge& knowledge) {
    std::string out(line);
    const bool timed = std::any_of(words.begin(), words.end(), [&](const Word& word) {
        Cursor cursor(line, word.begin);
        return cursor.digit() && minutes_at(cursor);
    });
    const auto is_heat = [&](std::size_t number) {
        return timed || (number > 0 && (knowledge.in_list(WordList::at_a_heat, words[number - 1].folded) ||
                                        knowledge.in_list(WordList::up_to_a_heat, words[number - 1].folded)));
    };
    for (std::size_t i = 1; i < words.size(); ++i)
        if (is_heat(i - 1) && (words[i].raw == "C" || words[i].raw == "F") &&
            std::isdigit(static_cast<unsigned char>(words[i - 1].raw.front())) != 0)
            std::fill(out.begin() + static_cast<std::ptrdiff_t>(words[i - 1].begin),
                      out.begin() + static_cast<std::ptrdiff_t>(words[i].end), ' ');
    return out;
}

// "1 sheet caul", "caul fat for wrapping": it holds a patty together. By weight it may be fat for the mass.
bool is_wrapping(const std::vector<Word>& words, Text line, const Knowledge& knowledge) {
    bool named = false, wraps = false;
    for (std::size_t i = 0; i < words.size(); ++i) {
        for (std::size_t end = i + 1; end <= std::min(words.size(), i + 3); ++end)
            named = named || knowledge.in_list(WordList::wrapping, fold(phrase(words, i, end)));
        wraps = wraps || knowledge.in_list(WordList::wrapping_verb, words[i].folded);
    }
    return named && (wraps || !weighs_something(words, line));
}

const Ingredient* wrapping_food(const std::vector<Word>& words, const Knowledge& knowledge) {
    for (std::size_t i = 0; i < words.size(); ++i)
        for (std::size_t end = std::min(words.size(), i + 3); end > i; --end)
            if (const std::string name = phrase(words, i, end); knowledge.in_list(WordList::wrapping, fold(name)))
                if (const auto* food = knowledge.ingredient_named(name)) return food;
    return nullptr;
}

}  // namespace

std::optional<Beside> beside_the_mass(std::string_view line, const Knowledge& knowledge) {
    std::string spaced(line);
    std::replace(spaced.begin(), spaced.end(), '/', ' ');  // "10 feet/3 meters hog casings"
    const auto words = words_of(line);
    const auto beside = [&](BesideKind kind, const Ingredient* food = nullptr) {
        return Beside{std::string(line), kind, food ? food->id : std::string(), {}};
    };
    if (is_casing(words, knowledge) || is_casing(words_of(spaced), knowledge)) return beside(BesideKind::casing);
    if (is_kitchen_goods(words, knowledge)) return beside(BesideKind::goods);
    if (is_wrapping(words, line, knowledge)) return beside(BesideKind::wrapping, wrapping_food(words, knowledge));
    return std::nullopt;
}

bool is_heading(std::string_view written, const Knowledge& knowledge) {
    std::string cells(written);
    if (!has_digit(written)) {  // "| Ingredient | Amount | % |", "Ingredient U.S. Metric"
        std::erase(cells, '.');
        std::replace_if(
            cells.begin(), cells.end(), [](char c) { return c == '|' || c == '\t' || c == '%'; }, ' ');
    }
    Text line = cells;
    const auto first = line.find_first_not_of(" \t*_=~#-"), last = line.find_last_not_of(" \t*_=~#-");
    if (first == Text::npos) return false;
    line = line.substr(first, last - first + 1);
    if (const auto stop = line.find(". "); stop != Text::npos && stop > 0 && line.find_first_not_of("0123456789") == stop)
        line = line.substr(stop + 2);  // "1. Meat"
    const bool colon = line.back() == ':';
    if (has_digit(line)) {  // "Ingredients (makes 20 fat ones):"
        const auto words = words_of(line);
        return colon && line.find(':') + 1 == line.size() && !words.empty() &&
               knowledge.in_list(WordList::column_name, words.front().folded) &&
               std::none_of(words.begin(), words.end(), [&](const Word& word) {
                   Cursor cursor(line, word.begin);
                   const auto unit = number_at(cursor, false) ? unit_at(cursor) : std::nullopt;
                   return unit && unit->unit->dimension != Dimension::count;
               });
    }
    if (colon) line.remove_suffix(1);
    if (knowledge.ingredient_named(line) || knowledge.ingredient_meant(line)) return false;
    const auto words = words_of(line);
    if (words.empty() || words.back().segment > 0) return false;
    if (knowledge.in_list(WordList::heading_line, fold(line))) return true;
    const bool for_the = words.size() > 2 && words.size() < 7 && words[0].folded == "for" && words[1].folded == "the";
    return colon || for_the ||
           std::all_of(words.begin(), words.end(), [&](const Word& word) { return knowledge.in_list(WordList::heading, word.folded); });
}

namespace {

bool says_in_list(const std::vector<Word>& words, std::size_t first, WordList list, const Knowledge& knowledge) {
    for (std::size_t last = first + 1; last <= std::min(words.size(), first + 2); ++last)
        if (knowledge.in_list(list, fold(phrase(words, first, last)))) return true;
    return false;
}

// Water for soaking and ice for chilling say nothing of what is in the mass.
bool names_a_food(const std::vector<Word>& words, const Knowledge& knowledge, const FoodIds& but) {
    for (std::size_t first = 0; first < words.size(); ++first)
        for (std::size_t last = first + 1; last <= std::min(words.size(), first + 3); ++last) {
            const auto* food = knowledge.ingredient_named(phrase(words, first, last));
            if (food && food->id != "water" && food->id != "ice" && but.count(food->id) == 0) return true;
        }
    return false;
}

// "Grind and mix with salt", "Add the vinegar last.": an order of several words, and no food that waits for its weight.
bool is_sentence(std::string_view line, const std::vector<Word>& words, const Knowledge& knowledge) {
    const auto last = line.find_last_not_of(' ');
    if (!says_in_list(words, 0, WordList::method_verb, knowledge) || has_digit(without_degrees(words, line, knowledge))) return false;
    if (line[last] == '.' || line[last] == '!') return true;
    for (std::size_t i = 1; i < words.size(); ++i)
        if (says_in_list(words, i, WordList::method_verb, knowledge) || knowledge.in_list(WordList::article, words[i].folded) ||
            knowledge.in_list(WordList::until_word, words[i].folded))
            return true;
    return false;
}
}  // namespace

bool is_method_line(std::string_view line, const Knowledge& knowledge, const FoodIds& own) {
    constexpr std::size_t fewest = 3;  // words
    const auto words = words_of(line);
    const bool short_order = !words.empty() && words.size() < fewest && line.find_last_not_of(' ') != Text::npos &&
                             line[line.find_last_not_of(' ')] == '.' && !has_digit(line);  // "Grill.", "Mix all."
    if ((words.size() < fewest && !short_order) || names_a_food(words, knowledge, own)) return false;
    if (names_a_food(words, knowledge, {})) return is_sentence(line, words, knowledge);
    const bool of_each = std::any_of(words.begin(), words.end(), [&](const Word& word) {  // "Form patties of 100 g each."
        return knowledge.in_list(WordList::shape_of_each, word.folded) || knowledge.in_list(WordList::link_word, word.folded);
    });
    const std::string cold = without_degrees(words, line, knowledge);
    if (weighs_something(words_of(cold), cold) && !(of_each && says_in_list(words, 0, WordList::method_verb, knowledge))) return false;
    if (says_in_list(words, 0, WordList::method_verb, knowledge)) return true;
    if (words[0].folded.ends_with("ly") && says_in_list(words, 1, WordList::method_verb, knowledge))
        return true;  // "Lightly crush in a mortar."
    for (std::size_t i = 0; i < words.size(); ++i)
        if (says_in_list(words, i, WordList::method_word, knowledge)) return true;
    return false;
}

}  // namespace standin
