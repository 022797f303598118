#include "knowledge/told/guests.hpp"

#include <algorithm>
#include <vector>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/records/word_list.hpp"
#include "knowledge/told/named_ages.hpp"
#include "knowledge/told/told_ages.hpp"
#include "knowledge/words/hazard_text.hpp"
#include "knowledge/words/said_words.hpp"

namespace standin {
namespace {

using Sentence = std::vector<std::string>;

constexpr std::string_view eaters_kind = "frail-eaters";

struct Named {
    std::size_t first = 0, last = 0;  // words
};

std::vector<Sentence> names_of(const Kind& kind) {
    std::vector<Sentence> all;
    for (const auto* names : {&kind.names, &kind.in_tongues})
        for (const auto& name : *names)
            if (Sentence words = hazard_text(name).words; !words.empty()) all.push_back(std::move(words));
    return all;
}

// The longest name that stands at a word.
Named named_at(const Sentence& words, std::size_t at, const std::vector<Sentence>& names) {
    Named best{at, at};
    for (const auto& sought : names) {
        if (at + sought.size() > words.size() || at + sought.size() <= best.last) continue;
        if (std::equal(sought.begin(), sought.end(), words.begin() + static_cast<std::ptrdiff_t>(at), same_word))
            best.last = at + sought.size();
    }
    return best;
}

// "Not for children", "nicht für die Kinder".
bool is_denied_to_them(const Sentence& words, std::size_t first, const Knowledge& knowledge) {
    std::size_t at = first;
    while (at > 0 && (knowledge.in_list(WordList::for_guests, fold(words[at - 1])) ||
                      knowledge.in_list(WordList::article, fold(words[at - 1])) || words[at - 1] == "any"))
        --at;
    return at > 0 && contains(knowledge.records().lexicon.denials.before, words[at - 1]);
}

// A school or a hospital is where people eat only where the sentence says before that it is for them, or tells of a meal behind.
bool is_fed(const Sentence& words, const Named& named, const Knowledge& knowledge) {
    if (!knowledge.in_list(WordList::place_of_guests, fold(said_words(words, named.first, named.last)))) return true;
    const auto behind = words.begin() + static_cast<std::ptrdiff_t>(named.last);
    return std::any_of(words.begin(), words.begin() + static_cast<std::ptrdiff_t>(named.first),
                       [&](const std::string& word) { return knowledge.in_list(WordList::for_guests, fold(word)); }) ||
           std::any_of(behind, behind + std::min<std::ptrdiff_t>(2, words.end() - behind),
                       [&](const std::string& word) { return knowledge.in_list(WordList::eaters_kitchen, fold(word)); });
}

bool listed_at(const Sentence& words, std::size_t at, WordList list, const Knowledge& knowledge) {
    return at < words.size() && knowledge.in_list(list, fold(words[at]));
}

// How many words from `at` on are one of the list, the most that are.
std::size_t phrase_at(const Sentence& words, std::size_t at, WordList list, const Knowledge& knowledge) {
    constexpr std::size_t longest = 3;  // words
    for (std::size_t end = std::min(words.size(), at + longest); end > at; --end)
        if (knowledge.in_list(list, fold(said_words(words, at, end)))) return end - at;
    return 0;
}

// Whether one of the list begins at one of `reach` words from `at` on.
bool follows(const Sentence& words, std::size_t at, std::size_t reach, WordList list, const Knowledge& knowledge) {
    for (std::size_t i = at; i < std::min(words.size(), at + reach); ++i)
        if (phrase_at(words, i, list, knowledge) > 0) return true;
    return false;
}

// "For my dear nan", "para los abuelos".
bool led_by_for(const Sentence& words, std::size_t at, const Knowledge& knowledge) {
    const auto past_articles = [&] {
        while (at > 0 && listed_at(words, at - 1, WordList::article, knowledge)) --at;
        return at > 0 && listed_at(words, at - 1, WordList::for_kin, knowledge);
    };
    if (past_articles()) return true;
    if (at == 0) return false;
    --at;
    return past_articles();
}

// "Nan and Gramps", "Oma und Opa", "Nan & Gramps".
bool stands_with_kin(const Sentence& words, const Named& kin, const Knowledge& knowledge) {
    const std::size_t behind = kin.last + (listed_at(words, kin.last, WordList::joins_kin, knowledge) ? 1 : 0);
    if (behind < words.size() && phrase_at(words, behind, WordList::kin_who_eat, knowledge) > 0)
        return !follows(words, behind + 1, 2, WordList::thing_of_kin, knowledge);
    return false;
}

// "For Grandad", "Nan and Gramps", "Oma's birthday", "Opa isst mit", but "my grandmother's recipe".
bool are_guests(const Sentence& words, const Named& kin, const Knowledge& knowledge) {
    constexpr std::size_t reach = 2;  // words
    if (follows(words, kin.last, reach, WordList::thing_of_kin, knowledge)) return false;
    return led_by_for(words, kin.first, knowledge) || stands_with_kin(words, kin, knowledge) ||
           follows(words, kin.last, reach, WordList::birthday_word, knowledge) ||
           follows(words, kin.last, reach + 2, WordList::eats_with_us, knowledge);
}

// The years of age that a word may tell: "90th", "90"; `ordinal` where it has the ending of one.
bool is_great_age(const std::string& word, bool& ordinal) {
    const auto end = std::min(word.find_first_not_of("0123456789"), word.size());
    if (end < 2 || end > 3) return false;
    int years = 0;
    for (std::size_t i = 0; i < end; ++i) years = years * 10 + (word[i] - '0');
    const std::string ending = word.substr(end);
    ordinal = ending == "th" || ending == "st" || ending == "nd" || ending == "rd";
    return years >= old_years && years <= oldest_years && (ordinal || ending.size() <= 2);
}

// "Her 90th", "the 90th birthday", "wird 90", "les 90 ans de mamie", "great-aunt's ninetieth", but "the 90th batch".
bool tells_great_age(const Sentence& words, std::size_t at, const Knowledge& knowledge) {
    constexpr std::size_t reach = 2;  // words
    const bool counts = follows(words, at + 1, 1, WordList::thing_of_a_number, knowledge);
    if (listed_at(words, at, WordList::old_age_word, knowledge)) return !counts;
    bool ordinal = false;
    if (counts || !is_great_age(words[at], ordinal)) return false;
    if (ordinal || follows(words, at + 1, reach, WordList::birthday_word, knowledge)) return true;
    const bool turns = (at > 0 && listed_at(words, at - 1, WordList::turns_of_age, knowledge)) ||
                       (at > 1 && listed_at(words, at - 2, WordList::turns_of_age, knowledge));
    if (listed_at(words, at + 1, WordList::year_word, knowledge))
        return turns || (at > 0 && listed_at(words, at - 1, WordList::article, knowledge));
    return turns && at + 1 == words.size();
}

}  // namespace

bool only_sounds_so(const std::vector<std::string>& words, std::size_t first, std::size_t last, const Knowledge& knowledge) {
    constexpr std::size_t reach = 3;  // words
    const auto in = [&](WordList list, std::size_t at) { return knowledge.in_list(list, fold(words[at])); };
    const std::size_t end = std::min(words.size(), last + reach);
    if (first > 0 && in(WordList::title_of_a_person, first - 1)) return true;  // "Constable Child"
    for (std::size_t at = last; at < end; ++at)
        if (in(WordList::eaters_kitchen, at)) return false;
    if (last < words.size() && knowledge.in_list(WordList::no_promise, fold(said_words(words, first, last + 1)))) return true;
    if (first > 0 && knowledge.in_list(WordList::no_promise, fold(said_words(words, first - 1, last)))) return true;
    for (std::size_t at = last; at < end && words[at] != ","; ++at)
        if (in(WordList::feast_or_street, at)) return true;
    return false;
}

std::string old_or_small_in(std::string_view sentence, const Knowledge& knowledge) {
    constexpr std::size_t reach = 3;  // words
    const Sentence words = hazard_text(sentence).words;
    if (auto named = named_age_in(sentence, knowledge); !named.empty()) return named;
    for (std::size_t at = 0; at < words.size(); ++at) {
        if (tells_great_age(words, at, knowledge)) return words[at];
        if (auto age = frail_age_at(words, at, knowledge); !age.empty() && !is_denied_to_them(words, at, knowledge)) return age;
        if (const auto place = phrase_at(words, at, WordList::place_of_the_small, knowledge);
            place > 0 && follows(words, at + place, reach, WordList::feast_of_guests, knowledge) &&
            !is_denied_to_them(words, at, knowledge))
            return said_words(words, at, at + place);
        const std::size_t kin = phrase_at(words, at, WordList::kin_who_eat, knowledge);
        if (kin > 0 && are_guests(words, {at, at + kin}, knowledge) && !is_denied_to_them(words, at, knowledge))
            return said_words(words, at, at + kin);
    }
    return {};
}

bool is_possessive_name(std::string_view text, std::string_view folded, const Knowledge& knowledge) {
    constexpr std::size_t longer_than_a_joint = 4;  // letters
    const auto is_large = [](std::string_view word) { return !word.empty() && word.front() >= 'A' && word.front() <= 'Z'; };
    bool after_a_name = false, after_kin = false, leads = true, found = false;
    for (std::size_t begin = 0; begin < text.size();) {
        const auto end = std::min(text.find(' ', begin), text.size());
        const std::string_view word = text.substr(begin, end - begin);
        begin = end + 1;
        if (found && word.size() >= longer_than_a_joint && word.front() >= 'a' && word.front() <= 'z') return true;
        const bool possessive = word.find("'s") != std::string_view::npos || word.find("\u2019s") != std::string_view::npos;
        const bool is_it = possessive && is_large(word) && hazard_fold(word) == folded;
        if (after_kin && is_it) return true;  // "Father Newborn's Links"
        found = found || (after_a_name && is_it);
        const std::string said = fold(word);
        after_kin = leads && is_large(word) && knowledge.in_list(WordList::person_of_an_age, said);
        leads = false;
        after_a_name = is_large(word) && !knowledge.in_list(WordList::article, said) && !knowledge.in_list(WordList::person_word, said) &&
                       !knowledge.in_list(WordList::for_guests, said) && !knowledge.in_list(WordList::for_kin, said) &&
                       !knowledge.in_list(WordList::person_of_an_age, said);
    }
    return false;
}

std::string guests_in(std::string_view sentence, const Knowledge& knowledge) {
    const Kind* kind = kind_of(eaters_kind, knowledge);
    if (!kind) return {};
    const Sentence words = hazard_text(sentence).words;
    const auto names = names_of(*kind);
    for (std::size_t at = 0; at < words.size(); ++at) {
        const Named named = named_at(words, at, names);
        if (named.last == at) continue;
        if (!is_denied_to_them(words, at, knowledge) && !only_sounds_so(words, named.first, named.last, knowledge) &&
            !is_possessive_name(sentence, said_words(words, named.first, named.last), knowledge) && is_fed(words, named, knowledge))
            return said_words(words, named.first, named.last);
        at = named.last - 1;
    }
    return old_or_small_in(sentence, knowledge);
}

}  // namespace standin
