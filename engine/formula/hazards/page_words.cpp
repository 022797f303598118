#include "formula/hazards/page_words.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <vector>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "formula/hazards/hazards.hpp"
#include "formula/lexer/digits.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/lexer/measures.hpp"
#include "formula/lexer/number_text.hpp"
#include "knowledge/records/word_list.hpp"
#include "knowledge/told/guests.hpp"

namespace standin {
namespace {

bool begins_with_number(const Word& word) { return std::isdigit(static_cast<unsigned char>(word.raw.front())) != 0; }

// "1x 2x 3x", "★★★★★", "|---|---|"
bool is_only_signs(const std::vector<Word>& words, std::string_view line) {
    if (words.empty()) return true;
    if (!has_digit(line))
        return std::none_of(words.begin(), words.end(), [](const Word& word) {
            return std::any_of(word.folded.begin(), word.folded.end(), [](unsigned char c) { return std::isalpha(c) != 0; });
        });
    return std::all_of(words.begin(), words.end(),
                       [](const Word& word) {
                           const auto letter = word.folded.find_first_not_of("0123456789");
                           return begins_with_number(word) && (letter == std::string::npos || word.folded.substr(letter) == "x");
                       }) &&
           words.size() > 1;
}

bool opens_with(const std::vector<Word>& words, WordList list, const Knowledge& knowledge) {
    constexpr std::size_t longest = 3;
    for (std::size_t last = std::min(words.size(), longest); last > 0; --last)
        if (knowledge.in_list(list, fold(phrase(words, 0, last)))) return true;
    return false;
}

bool holds_any(const std::vector<Word>& words, WordList list, const Knowledge& knowledge) {
    return std::any_of(words.begin(), words.end(), [&](const Word& word) { return knowledge.in_list(list, word.folded); });
}

// "Für 4 bis 6 Personen", "pour 2 kg": a number, those who eat or what it makes, and no weight behind it, as "je kg 17 g Salz" has.
bool feeds_so_many(const std::vector<Word>& words, std::string_view line, const Knowledge& knowledge) {
    bool number = false;
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (begins_with_number(words[i])) number = true;
        const auto letter = words[i].folded.find_first_not_of("0123456789.,");
        const bool eaters = knowledge.in_list(WordList::eaters_word, words[i].folded) ||
                            (letter != std::string::npos && knowledge.in_list(WordList::eaters_word, words[i].folded.substr(letter)));
        if (!number || !eaters) continue;
        for (std::size_t at = i + 1; at < words.size(); ++at) {
            Cursor behind(line, words[at].begin);
            if (!number_at(behind, false)) continue;
            const auto unit = unit_at(behind);
            if (unit && unit->unit->dimension != Dimension::count) return false;
        }
        return true;
    }
    return false;
}

// "3 g star" is a weight of something, no rating.
bool is_weighed(const std::vector<Word>& words, std::string_view line) {
    return std::any_of(words.begin(), words.end(), [&](const Word& word) {
        Cursor at(line, word.begin);
        if (!number_at(at, false)) return false;
        const auto unit = unit_at(at);
        return unit && unit->unit->dimension != Dimension::count;
    });
}

bool names_any_food(const std::vector<Word>& words, const Knowledge& knowledge) {
    constexpr std::size_t longest = 3;
    for (std::size_t first = 0; first < words.size(); ++first)
        for (std::size_t end = first + 1; end <= std::min(words.size(), first + longest); ++end)
            if (knowledge.ingredient_named(phrase(words, first, end)) || knowledge.ingredient_meant(phrase(words, first, end))) return true;
    return false;
}

// "From my kitchen to yours!", "NB lime next time": what the writer says to the reader, with no amount in it.
bool is_remark(const std::vector<Word>& words, std::string_view line, const Knowledge& knowledge) {
    constexpr std::size_t fewest = 4;
    const auto last = line.find_last_not_of(" )*_\"");
    const bool some = std::any_of(words.begin(), words.end(), [](const Word& word) { return unit_named(word.folded) != nullptr; });
    if (knowledge.in_list(WordList::remark_opening, words.front().folded)) return !some && !is_weighed(words, line);
    if (last == std::string_view::npos || (line[last] != '.' && line[last] != '!') || words.size() < fewest) return false;
    const bool amount = std::any_of(words.begin(), words.end(),
                                    [](const Word& word) { return unit_named(word.folded) != nullptr || has_digit(word.folded); });
    return !amount && holds_any(words, WordList::remark_word, knowledge) && !names_any_food(words, knowledge);
}

// "Tip: the board was used for prawns just before", "Uwaga: ...", with nothing weighed behind it.
bool is_keyed_remark(const std::vector<Word>& words, std::string_view line, const Knowledge& knowledge) {
    const auto colon = line.find(':');
    return colon != std::string_view::npos && knowledge.in_list(WordList::remark_key, fold(line.substr(0, colon))) &&
           !is_weighed(words, line);
}

// "No cure": said of what is left out on purpose.
bool leaves_out(const std::vector<Word>& words, const Knowledge& knowledge) {
    return words.size() > 1 && contains(knowledge.records().lexicon.denials.before, words.front().folded) &&
           knowledge.in_list(WordList::left_out_of_it, fold(phrase(words, 1, words.size())));
}

// "No nuts for the children": asked, for it may leave a food out.
bool leaves_a_food_out(const std::vector<Word>& words, std::string_view line, const Knowledge& knowledge) {
    const auto& denials = knowledge.records().lexicon.denials;
    const bool denied = std::any_of(words.begin(), words.end(), [&](const Word& word) {
        return contains(denials.before, word.folded) || contains(denials.after, word.folded);
    });
    return denied && (!foods_named(line, 3, knowledge).empty() || !allergens_named(line, knowledge).empty());
}

}  // namespace

bool is_said_of_guests(std::string_view line, const Knowledge& knowledge) {
    constexpr std::size_t fewest = 3;  // words: fewer may be a food
    const auto words = words_of(line);
    return words.size() >= fewest && !is_weighed(words, line) && !guests_in(line, knowledge).empty() &&
           !leaves_a_food_out(words, line, knowledge);
}

bool is_said_of_recipe(std::string_view line, const Knowledge& knowledge) {
    constexpr std::size_t longest_name = 5;  // words of "by" and a name
    const auto words = words_of(line);
    if (is_only_signs(words, line)) return true;
    if (opens_with(words, WordList::page_word, knowledge) || is_remark(words, line, knowledge) || is_keyed_remark(words, line, knowledge) ||
        leaves_out(words, knowledge))
        return true;
    const bool number = std::any_of(words.begin(), words.end(), begins_with_number);
    if (words.front().folded == "by") return !number && words.size() <= longest_name;
    if (number && !is_weighed(words, line) && holds_any(words, WordList::votes_word, knowledge)) return true;
    const bool article = words.front().raw == "a" || words.front().raw == "A";  // "a good 2 lb of pork"
    const bool led = !article && (knowledge.in_list(WordList::for_a_base, words.front().folded) ||
                                  knowledge.in_list(WordList::per, words.front().folded));
    return led && feeds_so_many(words, line, knowledge) && !names_any_food(words, knowledge);
}

namespace {

// "Cook: 12 min"
bool tells_only_time(std::string_view said, const Knowledge& knowledge) {
    const auto words = words_of(said);
    const auto is_time = [&](const Word& word) {
        const auto letter = word.folded.find_first_not_of("0123456789.,-");
        const std::string unit = letter == std::string::npos ? std::string() : word.folded.substr(letter);
        return knowledge.in_list(WordList::minute_word, unit) || knowledge.in_list(WordList::hour_word, unit);
    };
    return has_digit(said) && said.find(':') != std::string_view::npos && !words.empty() && is_time(words.back()) &&
           !names_any_food(words, knowledge);
}

}  // namespace

bool all_said_of_recipe(std::string_view line, const Knowledge& knowledge) {
    constexpr std::string_view between = " | ";
    if (line.find(between) == std::string_view::npos) return is_said_of_recipe(line, knowledge);
    for (std::size_t from = 0; from < line.size();) {
        const auto to = std::min(line.find(between, from), line.size());
        const auto said = line.substr(from, to - from);
        if (!is_said_of_recipe(said, knowledge) && !tells_only_time(said, knowledge)) return false;
        from = to == line.size() ? to : to + between.size();
    }
    return true;
}

bool tells_mass_of_all(std::string_view heading, const Knowledge& knowledge) {
    const auto words = words_of(heading);
    return is_weighed(words, heading) && holds_any(words, WordList::whole_batch, knowledge) && !holds_any(words, WordList::per, knowledge);
}

}  // namespace standin
