#include "knowledge/told/told_ages.hpp"

#include <algorithm>

#include "core/names.hpp"
#include "knowledge/records/word_list.hpp"
#include "knowledge/words/hazard_text.hpp"
#include "knowledge/words/said_words.hpp"

namespace standin {
namespace {

using AgeWords = std::vector<std::string>;

constexpr int small_years = 10;  // judgement
constexpr int small_months = 60;

enum class AgeUnit { none, years, months, in_the_word };

// A number of years and how it is told, from the word `first` up to `last`.
struct ToldAge {
    std::size_t first = 0, last = 0;
    AgeUnit unit = AgeUnit::none;
    bool old = false;  // "old", "alt", "de edad" stands behind it

    bool as_an_age() const { return old || unit == AgeUnit::in_the_word; }
};

class Ages {
public:
    Ages(const AgeWords& words, const Knowledge& knowledge) : words_(words), knowledge_(knowledge) {}

    FrailNumber number() const {
        ToldAge age{0, 0, AgeUnit::none, false};
        const int number = number_at(age);
        return {number > 0 && age.last > 0 && age.unit == AgeUnit::none, years_are_frail(number), number <= small_months};
    }

    std::string told(std::size_t at) const {
        ToldAge age{at, at, AgeUnit::none, false};
        const int number = number_at(age);
        if (age.last == at) return {};
        if (age.unit == AgeUnit::none) {
            if (const auto years = phrase(age.last, WordList::year_word)) age.unit = AgeUnit::years, age.last += years;
            else if (const auto months = phrase(age.last, WordList::month_of_age)) age.unit = AgeUnit::months, age.last += months;
        }
        if (age.unit == AgeUnit::years || age.unit == AgeUnit::months)
            if (const auto old = phrase(age.last, WordList::old_behind_age)) age.old = true, age.last += old;
        const bool frail = age.unit == AgeUnit::months ? number <= small_months : years_are_frail(number);
        return number > 0 && frail && is_of_somebody(age) ? said_words(words_, age.first, age.last) : std::string();
    }

private:
    static bool years_are_frail(int number) { return number <= small_years || (number >= old_years && number <= oldest_years); }

    bool in(WordList list, std::size_t at) const { return at < words_.size() && knowledge_.in_list(list, fold(words_[at])); }

    // How many words from `at` on are one of the list, the most that are.
    std::size_t phrase(std::size_t at, WordList list) const {
        constexpr std::size_t longest = 3;  // words
        for (std::size_t end = std::min(words_.size(), at + longest); end > at; --end)
            if (knowledge_.in_list(list, fold(said_words(words_, at, end)))) return end - at;
        return 0;
    }

    // How many words before `end` are one of the list.
    std::size_t phrase_before(std::size_t end, WordList list) const {
        constexpr std::size_t longest = 3;  // words
        for (std::size_t count = std::min(end, longest); count > 0; --count)
            if (knowledge_.in_list(list, fold(said_words(words_, end - count, end)))) return count;
        return 0;
    }

    // "3", "88", "two", "eighty-eight", "achtundachtzig", "3jährige", "dreijährige": the years, nought where it is no such number.
    int number_at(ToldAge& age) const {
        const std::string& word = words_[age.first];
        const auto digits = std::min(word.find_first_not_of("0123456789"), word.size());
        if (digits > 0) {
            if (digits > 3 || !ends_as_an_age(word, digits, age)) return 0;
            int number = 0;
            for (std::size_t i = 0; i < digits; ++i) number = number * 10 + (word[i] - '0');
            return number;
        }
        if (const auto great = phrase(age.first, WordList::great_age_word)) {
            age.last = age.first + great;
            if (in(WordList::small_age_word, age.last)) ++age.last;
            joined_ending(age);
            return old_years;
        }
        if (in(WordList::small_age_word, age.first)) {
            age.last = age.first + 1;
            joined_ending(age);
            return 1;
        }
        return compound(word, age);
    }

    // "3-jährige", "two-yr-old", "3-åring".
    void joined_ending(ToldAge& age) const {
        if (in(WordList::age_ending, age.last) && !in(WordList::year_word, age.last)) age.unit = AgeUnit::in_the_word, ++age.last;
    }

    bool ends_as_an_age(const std::string& word, std::size_t digits, ToldAge& age) const {
        age.last = age.first + 1;
        if (digits == word.size()) {
            joined_ending(age);
            return true;
        }
        if (!knowledge_.in_list(WordList::age_ending, fold(word.substr(digits)))) return age.last = age.first, false;
        age.unit = AgeUnit::in_the_word;
        return true;
    }

    // A number and what follows in one word.
    int compound(const std::string& word, ToldAge& age) const {
        constexpr std::size_t shortest = 3;
        for (std::size_t cut = shortest; cut + shortest <= word.size(); ++cut) {
            const std::string head = fold(word.substr(0, cut)), tail = fold(word.substr(cut));
            const bool small = knowledge_.in_list(WordList::small_age_word, head);
            const bool great = knowledge_.in_list(WordList::great_age_word, head), ends = knowledge_.in_list(WordList::age_ending, tail);
            const bool great_behind = knowledge_.in_list(WordList::great_age_word, tail);
            const bool adds_one = great && knowledge_.in_list(WordList::small_age_word, tail);
            if (!((small || great) && ends) && !great_behind && !adds_one) continue;
            age.last = age.first + 1;
            if (ends) age.unit = AgeUnit::in_the_word;
            else joined_ending(age);
            return great || great_behind ? old_years : 1;
        }
        return 0;
    }

    bool is_person(std::size_t at) const { return phrase(at, WordList::person_of_an_age) > 0 || phrase(at, WordList::kin_who_eat) > 0; }

    bool is_thing(std::size_t at) const {
        return at < words_.size() && (in(WordList::thing_of_an_age, at) || knowledge_.ingredient_named(fold(words_[at])) != nullptr);
    }

    bool is_number(std::size_t at) const { return at < words_.size() && words_[at].find_first_not_of("0123456789") == std::string::npos; }

    bool goes_on(std::size_t at) const { return at >= words_.size() || in(WordList::behind_an_age, at); }

    // "Aged 2, 34 and 86": the words before the first of several ages, where one is told at `at`.
    std::size_t first_of_ages(std::size_t at) const {
        while (at >= 2 && (is_number(at - 1) || (in(WordList::joins_kin, at - 1) && is_number(at - 2)))) at -= is_number(at - 1) ? 1 : 2;
        return at;
    }

    // Somebody within `reach` words before it, and no thing nearer.
    bool person_before(std::size_t at, std::size_t reach) const {
        for (std::size_t back = 1; back <= std::min(reach, at); ++back) {
            if (is_person(at - back)) return true;
            if (is_thing(at - back)) return false;
        }
        return false;
    }

    // A thing that the age may be of: "cheddar aged two", but not "links for Ida, aged two".
    bool thing_before(std::size_t at, std::size_t reach) const {
        for (std::size_t back = 1; back <= std::min(reach, at); ++back) {
            if (in(WordList::for_kin, at - back)) return false;
            if (is_thing(at - back)) return true;
        }
        return false;
    }

    bool article_before(std::size_t at) const { return at > 0 && in(WordList::article, at - 1); }

    bool for_before(std::size_t at) const {
        constexpr std::size_t reach = 3;  // words
        for (std::size_t back = 1; back <= std::min(reach, at); ++back)
            if (in(WordList::for_kin, at - back) || in(WordList::person_word, at - back)) return true;
        return false;
    }

    // "For great-aunt Edith, 91": said to be for them, and not only "my wife took 3".
    bool for_them(std::size_t at) const {
        constexpr std::size_t reach = 4;  // words
        for (std::size_t back = 1; back <= std::min(reach, at); ++back)
            if (in(WordList::for_kin, at - back)) return true;
        return false;
    }

    // "Lena is 3 years old", where the sentence begins with a name that no food has.
    bool named_first(const ToldAge& age) const {
        std::size_t at = 0;
        while (at < age.first && (in(WordList::remark_key, at) || in(WordList::remark_word, at) || words_[at] == "note")) ++at;
        return at + 2 <= age.first && age.first - at <= 3 && leads(age.first) && !in(WordList::article, at) &&
               !in(WordList::person_word, at) && !is_thing(at) && !is_thing(at + 1);
    }

    bool leads(std::size_t at) const {
        return phrase_before(at, WordList::leads_an_age) > 0 || phrase_before(at, WordList::turns_of_age) > 0;
    }

    bool is_of_somebody(const ToldAge& age) const {
        constexpr std::size_t in_sentence = 8, near_by = 4;  // words
        const std::size_t first = first_of_ages(age.first);
        const bool aged = phrase_before(first, WordList::aged_word) > 0;
        if (is_thing(age.last)) return false;
        if (age.unit == AgeUnit::none) {
            if (aged) return (goes_on(age.last) || is_number(age.last)) && !thing_before(first, near_by);
            if (!goes_on(age.last) || (age.first > 0 && in(WordList::thing_of_a_number, age.first - 1))) return false;
            if (leads(age.first) && person_before(age.first, near_by)) return true;
            return age.last == words_.size() && for_before(age.first) &&
                   (person_before(age.first, 1) || (person_before(age.first, 2) && for_them(age.first)));
        }
        if (age.as_an_age()) {
            if (is_person(age.last) || is_person(age.last + 1) || person_before(age.first, in_sentence)) return true;
            if (thing_before(age.first, near_by)) return false;
            return for_before(age.first) || (goes_on(age.last) && article_before(age.first)) || named_first(age);
        }
        return (aged || leads(age.first)) && (person_before(age.first, near_by) || (goes_on(age.last) && named_first(age)));
    }

    const AgeWords& words_;
    const Knowledge& knowledge_;
};

}  // namespace

FrailNumber frail_number(std::string_view word, const Knowledge& knowledge) {
    const AgeWords words = hazard_text(word).words;
    return words.empty() ? FrailNumber{} : Ages(words, knowledge).number();
}

std::string frail_age_at(const std::vector<std::string>& words, std::size_t at, const Knowledge& knowledge) {
    return Ages(words, knowledge).told(at);
}

}  // namespace standin
