#include "knowledge/told/named_ages.hpp"

#include <algorithm>
#include <optional>
#include <vector>

#include "core/names.hpp"
#include "knowledge/records/word_list.hpp"
#include "knowledge/told/told_ages.hpp"

namespace standin {
namespace {

// A word or a sign of a text.
struct NameToken {
    std::string text;
    bool word = false, capital = false;
};

bool part_of_a_word(unsigned char c) { return c >= 0x80 || (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }

// A capital of the Latin or the Cyrillic letters.
bool begins_with_a_capital(std::string_view word) {
    const auto byte = [&](std::size_t i) { return i < word.size() ? static_cast<unsigned char>(word[i]) : 0U; };
    const unsigned first = byte(0), second = byte(1);
    if (first >= 'A' && first <= 'Z') return true;
    if (first == 0xC3) return second >= 0x80 && second <= 0x9E;
    if (first == 0xC4 || first == 0xC5) return true;
    return first == 0xD0 && second >= 0x81 && second <= 0xAF;
}

std::vector<NameToken> name_tokens(std::string_view text) {
    std::vector<NameToken> all;
    for (std::size_t at = 0; at < text.size();) {
        std::size_t end = at;
        while (end < text.size() && part_of_a_word(static_cast<unsigned char>(text[end]))) ++end;
        if (end > at) {
            const std::string word(text.substr(at, end - at));
            all.push_back({word, true, begins_with_a_capital(word)});
            at = end;
            continue;
        }
        if (text[at] != ' ' && text[at] != '\t') all.push_back({std::string(1, text[at]), false, false});
        ++at;
    }
    return all;
}

// An age beside a name, from the token `first` up to `last`.
struct NamedAge {
    std::size_t name = 0, first = 0, last = 0;
    bool frail = false, unit = false, old = false, bracket = false;
};

class NamedAges {
public:
    NamedAges(std::string_view text, const Knowledge& knowledge) : knowledge_(knowledge), tokens_(name_tokens(text)) {}

    std::string told() const {
        std::vector<NamedAge> all;
        for (std::size_t at = 2; at < tokens_.size(); ++at)
            if (const auto age = age_at(at)) all.push_back(*age);
        for (const auto& age : all)
            if (age.frail && is_of_a_guest(age, all.size())) return said(age);
        return {};
    }

private:
    bool is_word(std::size_t at) const { return at < tokens_.size() && tokens_[at].word; }
    bool sign(std::size_t at, std::string_view signs) const {
        return at < tokens_.size() && !tokens_[at].word && signs.find(tokens_[at].text) != std::string_view::npos;
    }
    bool in(WordList list, std::size_t at) const { return is_word(at) && knowledge_.in_list(list, fold(tokens_[at].text)); }

    std::string said(const NamedAge& age) const {
        std::string words = tokens_[age.name].text;
        for (std::size_t at = age.first; at < age.last; ++at) words += " " + tokens_[at].text;
        return words;
    }

    bool is_person(std::size_t at) const { return in(WordList::person_of_an_age, at) || in(WordList::kin_who_eat, at); }

    bool is_thing(std::size_t at) const {
        return in(WordList::thing_of_an_age, at) || in(WordList::thing_of_a_number, at) || in(WordList::thing_of_kin, at) ||
               in(WordList::feast_or_street, at) || in(WordList::month_of_age, at) || in(WordList::year_word, at) ||
               in(WordList::remark_word, at) || in(WordList::remark_key, at) || knowledge_.ingredient_named(fold(tokens_[at].text));
    }

    bool is_name(std::size_t at) const {
        if (!is_word(at)) return false;
        if (is_person(at)) return true;
        constexpr std::size_t shortest = 2;
        const std::string& word = tokens_[at].text;
        return word.size() >= shortest && tokens_[at].capital && word.find_first_of("0123456789") == std::string::npos && !is_thing(at) &&
               !in(WordList::article, at) && !in(WordList::for_guests, at) && !in(WordList::aged_word, at);
    }

    // "(84)", ", 14 months", ", 2 years old".
    std::optional<NamedAge> age_at(std::size_t at) const {
        NamedAge age{at - 2, at, at, false, false, false, sign(at - 1, "([")};
        if (!(age.bracket || sign(at - 1, ",:")) || !is_name(age.name) || !is_word(at)) return std::nullopt;
        while (in(WordList::aged_word, age.first) || in(WordList::leads_an_age, age.first)) ++age.first;
        const auto number = is_word(age.first) ? frail_number(tokens_[age.first].text, knowledge_) : FrailNumber{};
        if (!number.read) return std::nullopt;
        age.last = age.first + 1;
        bool months = false;
        if (in(WordList::year_word, age.last)) age.unit = true, ++age.last;
        else if (in(WordList::month_of_age, age.last)) age.unit = months = true, ++age.last;
        if (age.unit && in(WordList::old_behind_age, age.last)) age.old = true, ++age.last;
        age.old = age.old || age.first > at;
        age.frail = months ? number.months : number.years;
        const bool ends = age.last >= tokens_.size() || sign(age.last, "()[],;.!&+/-") || in(WordList::joins_kin, age.last) ||
                          in(WordList::behind_an_age, age.last);
        return ends ? std::optional(age) : std::nullopt;
    }

    // "For Ida", "pour la petite Mia", "for Uwe and Ida".
    bool led_by_for(std::size_t name) const {
        constexpr std::size_t reach = 5;  // words
        for (std::size_t at = name, back = 0; at > 0 && back < reach; ++back) {
            --at;
            if (in(WordList::for_kin, at)) return true;
            if (!is_name(at) && !in(WordList::article, at) && !in(WordList::joins_kin, at) && !sign(at, ",&") && at + 1 != name)
                return false;
        }
        return false;
    }

    bool comes_to_eat() const {
        for (std::size_t at = 0; at < tokens_.size(); ++at) {
            if (in(WordList::eats_with_us, at)) return true;
            if (is_word(at) && is_word(at + 1) &&
                knowledge_.in_list(WordList::eats_with_us, fold(tokens_[at].text + " " + tokens_[at + 1].text)))
                return true;
        }
        return false;
    }

    bool is_of_a_guest(const NamedAge& age, std::size_t named) const {
        return age.old || named > 1 || is_person(age.name) || led_by_for(age.name) || comes_to_eat();
    }

    const Knowledge& knowledge_;
    std::vector<NameToken> tokens_;
};

}  // namespace

std::string named_age_in(std::string_view text, const Knowledge& knowledge) { return NamedAges(text, knowledge).told(); }

}  // namespace standin
