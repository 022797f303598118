#include "formula/hazards/stood_warm.hpp"

#include <algorithm>
#include <optional>
#include <vector>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "knowledge/records/word_list.hpp"
#include "knowledge/words/forbidden.hpp"
#include "knowledge/words/hazard_text.hpp"
#include "knowledge/words/said_words.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

using HazardWords = std::vector<std::string>;

constexpr std::size_t longest_told = 4;  // words
constexpr double most_hours_out = 2;     // out of the cold in all: usda-danger-zone
constexpr double least_warm_c = 8;       // judgement: a fridge that is a little too warm is another matter
constexpr double least_hot_c = 57;       // held so it is kept hot: us-food-code-3-501-16

// Where words of a list stand: the first of them and the one behind the last; nothing where none do.
struct StandsAt {
    std::size_t first = 0, last = 0;
};

std::optional<StandsAt> stands_first(const HazardWords& words, WordList list, const Knowledge& knowledge) {
    for (std::size_t first = 0; first < words.size(); ++first)
        for (std::size_t last = std::min(words.size(), first + longest_told); last > first; --last)
            if (knowledge.in_list(list, fold(said_words(words, first, last)))) return StandsAt{first, last};
    return std::nullopt;
}

bool is_of_hours(const std::string& word, const Knowledge& knowledge) {
    return word == "h" || knowledge.in_list(WordList::hour_word, fold(word));
}

std::optional<double> hours_in_word(const std::string& word, const Knowledge& knowledge) {
    if (const auto number = number_in(word)) return number;
    return knowledge.in_list(WordList::three_or_more, fold(word)) ? std::optional(most_hours_out + 1) : std::nullopt;
}

// "5 h", "5h", "three hours".
bool tells_many_hours(const HazardWords& words, const Knowledge& knowledge) {
    for (std::size_t i = 0; i < words.size(); ++i) {
        const auto letter = words[i].find_first_not_of("0123456789");
        if (letter != std::string::npos && letter > 0 && is_of_hours(words[i].substr(letter), knowledge))
            if (const auto number = number_in(words[i].substr(0, letter)); number && *number > most_hours_out) return true;
        if (i + 1 >= words.size() || !is_of_hours(words[i + 1], knowledge)) continue;
        if (const auto number = hours_in_word(words[i], knowledge); number && *number > most_hours_out) return true;
    }
    return false;
}

// "From 8 to 17", "von 9 bis 18 Uhr".
bool tells_clock(const HazardWords& words, const Knowledge& knowledge) {
    for (std::size_t i = 0; i + 3 < words.size(); ++i) {
        const auto from = number_in(words[i + 1]), to = number_in(words[i + 3]);
        if (knowledge.in_list(WordList::from_hour, fold(words[i])) && knowledge.in_list(WordList::to_hour, fold(words[i + 2])) && from &&
            to && *to <= 24 && *to - *from > most_hours_out)
            return true;
    }
    return false;
}

enum class HowWarm { nothing, cold, warm, hot };

HowWarm as_told(double celsius) { return celsius >= least_hot_c ? HowWarm::hot : celsius >= least_warm_c ? HowWarm::warm : HowWarm::cold; }

// "At 20 C", "bei 22 Grad".
HowWarm temperature_in(const HazardWords& words, const Knowledge& knowledge) {
    constexpr double freezing_f = 32, f_a_degree = 1.8;
    for (std::size_t i = 0; i < words.size(); ++i) {
        const auto letter = words[i].find_first_not_of("0123456789");
        const std::string unit =
            letter == std::string::npos ? (i + 1 < words.size() ? words[i + 1] : std::string()) : words[i].substr(letter);
        const auto number = number_in(words[i].substr(0, letter));
        if (!number || letter == 0) continue;
        if (unit == "f" || unit == "fahrenheit") return as_told((*number - freezing_f) / f_a_degree);
        if (unit == "c" || unit == "celsius" || knowledge.in_list(WordList::degree_word, fold(unit))) return as_told(*number);
    }
    return HowWarm::nothing;
}

// "I stood in the kitchen all day" is of the cook, "the kitchen was warm all day" of the kitchen.
bool is_of_somebody(const HazardWords& words, const StandsAt& verb, const Knowledge& knowledge) {
    for (std::size_t at = verb.first; at > 0 && verb.first - at < 2; --at)
        if (knowledge.in_list(WordList::who_stands, fold(words[at - 1]))) return true;
    return verb.first > 0 && knowledge.in_list(WordList::warm_place, fold(words[verb.first - 1]));
}

// "In the fridge", but neither "not in the fridge" nor "instead of the fridge".
bool was_cold(const HazardWords& words, const Knowledge& knowledge) {
    constexpr std::size_t reach = 5;  // words: "instead of in the fridge"
    const auto cold = stands_first(words, WordList::cold_place, knowledge);
    if (!cold) return false;
    for (std::size_t at = cold->first; at > 0 && cold->first - at < reach; --at)
        if (contains(knowledge.records().lexicon.denials.before, words[at - 1]) ||
            knowledge.in_list(WordList::in_place_of, fold(words[at - 1])))
            return false;
    return true;
}

bool stood_there(const HazardWords& words, const Knowledge& knowledge) {
    const auto verb = stands_first(words, WordList::stood_there, knowledge);
    if (!verb || is_of_somebody(words, *verb, knowledge)) return false;
    if (is_forbidden(HazardText{words}, verb->first, verb->last, knowledge.records().lexicon.prohibitions)) return false;
    const HowWarm told = temperature_in(words, knowledge);
    const bool warm = told == HowWarm::warm || (told == HowWarm::nothing && stands_first(words, WordList::warm_place, knowledge));
    if (!warm || was_cold(words, knowledge)) return false;
    if (stands_first(words, WordList::may_stand_warm, knowledge) && !stands_first(words, WordList::mass_word, knowledge)) return false;
    return stands_first(words, WordList::long_while, knowledge) || tells_many_hours(words, knowledge) || tells_clock(words, knowledge);
}

// Parts of a sentence that each tell of one stay: "in the fridge overnight, then on the bench for 20 minutes".
std::vector<std::string> stays_in(std::string_view text, const Knowledge& knowledge) {
    std::vector<std::string> all;
    std::string clause;
    const auto end = [&] {
        if (!clause.empty()) all.push_back(clause);
        clause.clear();
    };
    std::string word;
    const auto take = [&] {
        if (knowledge.in_list(WordList::next_stay, fold(word))) end();
        else if (!word.empty()) clause += (clause.empty() ? "" : " ") + word;
        word.clear();
    };
    for (const char c : text) {
        if (c != ' ' && c != ',' && c != ';' && c != '\n' && c != '(' && c != ')') {
            word += c;
            continue;
        }
        take();
        if (c != ' ') end();
    }
    take();
    end();
    return all;
}

}  // namespace

std::string stood_warm(std::string_view text, const Knowledge& knowledge) {
    const HazardWords whole = hazard_text(text).words;
    if (!stands_first(whole, WordList::stood_there, knowledge) || stands_first(whole, WordList::at_table, knowledge)) return {};
    const auto clauses = stays_in(text, knowledge);
    for (const auto& clause : clauses)
        if (stood_there(hazard_text(clause).words, knowledge)) return clause;
    // "Stood, all day, in the kitchen": one stay over several clauses, where nothing in any of them was cold.
    if (!stands_first(whole, WordList::cold_place, knowledge) && stood_there(whole, knowledge)) return std::string(text);
    return {};
}

}  // namespace standin
