#include "knowledge/told/must_go_without.hpp"

#include <algorithm>
#include <optional>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/records/word_list.hpp"
#include "knowledge/told/guests.hpp"
#include "knowledge/words/hazard_text.hpp"
#include "knowledge/words/said_words.hpp"

namespace standin {
namespace {

using WordRow = std::vector<std::string>;

constexpr std::size_t longest_name = 4;    // words
constexpr std::size_t longest_phrase = 4;  // likewise, of what nobody can eat
constexpr std::string_view gluten = "gluten", halal = "halal", kosher = "kosher", nuts = "nuts", tree_nut = "tree-nut";

bool names_an_allergen(const Kind& kind, const Knowledge& knowledge) {
    const auto& all = knowledge.records().allergens;
    return !kind.diet && std::any_of(all.begin(), all.end(), [&](const auto& one) { return takes_allergen(kind, one.id, knowledge); });
}

void add_name(WordRow& all, const std::string& one) {
    if (!one.empty() && !contains(all, one)) all.push_back(one);
}

// The name by which an allergen is left out. Who is allergic to "nuts" is not asked which.
std::string name_of_allergen(std::string_view allergen, const Knowledge& knowledge) {
    if (allergen == tree_nut) allergen = nuts;
    const Kind* kind = kind_of(allergen, knowledge);
    if (!kind) kind = kind_named(allergen, knowledge);
    return kind ? kind->names.front() : std::string();
}

const Kind* kind_said(const std::string& phrase, const Knowledge& knowledge) {
    const Kind* kind = kind_named(fold(phrase), knowledge);
    if (!kind) kind = kind_in_any_tongue(phrase, knowledge);
    return kind && !kind->diet ? kind : nullptr;
}

// The allergens that the words of the lexicon name with the whole of a phrase.
WordRow allergens_of_phrase(const WordRow& words, const Knowledge& knowledge) {
    WordRow all;
    for (const auto& match : hazards_in(HazardText{words}, knowledge.records().lexicon))
        if (match.hazard->act == HazardAct::declare && match.first == 0 && match.last == words.size())
            add_name(all, name_of_allergen(match.hazard->allergen, knowledge));
    return all;
}

// A capital, of Latin letters with or without an accent.
bool begins_large(std::string_view text) {
    if (text.empty()) return false;
    const bool accented = text.size() > 1 && text[0] == '\xC3' && static_cast<unsigned char>(text[1]) <= 0x9E;
    return accented || (text[0] >= 'A' && text[0] <= 'Z');
}

class SaidOfWhom {
public:
    SaidOfWhom(std::string_view text, const Knowledge& knowledge) : text_(text), knowledge_(knowledge), words_(hazard_text(text).words) {}

    MustGoWithout read() const {
        MustGoWithout found;
        if (words_.empty() || says_any(WordList::allergy_in_general, 3)) return found;
        for (std::size_t at = 0; at < words_.size(); ++at) {
            of_allergy(at, found);
            of_what_nobody_eats(at, found);
            of_harm(at, found);
            of_a_creed(at, WordList::eats_halal, halal, found);
            of_a_creed(at, WordList::eats_kosher, kosher, found);
        }
        found.plainly = found.said;
        if (may_promise())
            for (std::size_t at = 0; at < words_.size(); ++at) of_a_promise(at, found);
        found.of_a_packet = found.said && tells_of_a_packet();
        return found;
    }

private:
    bool listed(std::size_t first, std::size_t last, WordList list) const {
        if (last > words_.size() || first >= last) return false;
        const std::string said = said_words(words_, first, last);
        return knowledge_.in_list(list, fold(said)) || knowledge_.in_list_as_written(list, said);
    }

    // How many words from `at` on are one of the list; zero: none.
    std::size_t phrase_of(std::size_t at, WordList list, std::size_t longest) const {
        for (std::size_t length = std::min(longest, words_.size() - std::min(at, words_.size())); length > 0; --length)
            if (listed(at, at + length, list)) return length;
        return 0;
    }

    bool says_any(WordList list, std::size_t longest) const {
        for (std::size_t at = 0; at < words_.size(); ++at)
            if (phrase_of(at, list, longest) > 0) return true;
        return false;
    }

    bool is_denial(std::size_t at) const {
        return contains(knowledge_.records().lexicon.denials.before, words_[at]) || listed(at, at + 1, WordList::denies_bearing);
    }

    // "Not allergic", "no known allergies", "keine Nussallergie", "nobody is allergic".
    bool is_denied(std::size_t at) const {
        constexpr std::size_t reach = 2;  // words
        if (says_any(WordList::nobody_word, 3)) return true;
        for (std::size_t back = 1; back <= std::min(reach, at); ++back) {
            if (is_denial(at - back)) return true;
            if (!names_at(at - back, at - back + 1).empty()) return false;
        }
        return false;
    }

    bool tells_of_a_packet() const {
        return std::any_of(words_.begin(), words_.end(), [&](const std::string& word) {
            return fits_any(knowledge_.records().lexicon.holds, word) || knowledge_.in_list(WordList::contact_word, fold(word));
        });
    }

    // Kinds and allergens that the words [first, last) name, as a whole.
    WordRow names_at(std::size_t first, std::size_t last) const {
        const std::string phrase = said_words(words_, first, last);
        if (last - first == 1 && knowledge_.in_list(WordList::person_word, fold(phrase))) return {};
        if (const Kind* kind = kind_said(phrase, knowledge_); kind && names_an_allergen(*kind, knowledge_)) return {kind->names.front()};
        const WordRow part(words_.begin() + static_cast<std::ptrdiff_t>(first), words_.begin() + static_cast<std::ptrdiff_t>(last));
        if (auto all = allergens_of_phrase(part, knowledge_); !all.empty()) return all;
        WordRow all;
        if (const auto* food = knowledge_.ingredient_named(phrase); food && phrase.size() > 2)
            for (const auto& allergen : food->allergens) add_name(all, name_of_allergen(allergen, knowledge_));
        return all;
    }

    // A food or a kind of food that the words [first, last) name, as a whole, whether a law lists it or not.
    WordRow food_at(std::size_t first, std::size_t last) const {
        const std::string phrase = said_words(words_, first, last);
        if (last - first == 1 && (phrase.size() < 3 || knowledge_.in_list(WordList::person_word, fold(phrase)) ||
                                  knowledge_.in_list(WordList::article, fold(phrase))))
            return {};
        if (const Kind* kind = kind_said(phrase, knowledge_)) return {kind->names.front()};
        const auto* food = knowledge_.ingredient_named(phrase);
        return food ? WordRow{food->names.front()} : WordRow{};
    }

    // "Room temperature", "a warm room": "room" is the cream of the Dutch.
    bool is_another_thing(std::size_t first, std::size_t last) const {
        return listed(first, last + 1, WordList::no_promise) || (first > 0 && listed(first - 1, last, WordList::no_promise));
    }

    // What is named from one word up to another, the longest name at each.
    WordRow between(std::size_t first, std::size_t last, WordRow (SaidOfWhom::*named)(std::size_t, std::size_t) const) const {
        WordRow all;
        for (std::size_t at = first; at < last;) {
            std::size_t next = at + 1;
            for (std::size_t end = std::min(last, at + longest_name); end > at; --end) {
                const WordRow names = (this->*named)(at, end);
                if (names.empty() || is_another_thing(at, end)) continue;
                for (const auto& name : names) add_name(all, name);
                next = end;
                break;
            }
            at = next;
        }
        return all;
    }

    WordRow allergens_between(std::size_t first, std::size_t last) const { return between(first, last, &SaidOfWhom::names_at); }
    WordRow foods_between(std::size_t first, std::size_t last) const { return between(first, last, &SaidOfWhom::food_at); }

    // "..., so I use walnuts", "aber": what is said there is of another food.
    std::size_t clause_begin(std::size_t at) const {
        while (at > 0 && !listed(at - 1, at, WordList::turns_to_another)) --at;
        return at;
    }
    std::size_t clause_end(std::size_t at) const {
        while (at < words_.size() && !listed(at, at + 1, WordList::turns_to_another)) ++at;
        return at;
    }

    // "Nuss" of "Nussallergie", "melk" of "koemelkallergie".
    WordRow within(const std::string& word) const {
        constexpr std::size_t shortest_part = 4;  // letters
        for (std::size_t from = 0; from == 0 || from + shortest_part <= word.size(); ++from) {
            const std::string part = word.substr(from);
            if (part.empty()) return {};
            if (const Kind* kind = kind_said(part, knowledge_); kind && (from == 0 || names_an_allergen(*kind, knowledge_)))
                return {kind->names.front()};
            if (auto all = allergens_of_phrase({part}, knowledge_); !all.empty()) return all;
        }
        return {};
    }

    std::optional<std::string> before_ending(const std::string& word, WordList endings) const {
        for (const auto& listed : knowledge_.listed(endings)) {
            const std::string end = hazard_fold(listed);
            if (word.size() > end.size() + 1 && word.ends_with(end)) return word.substr(0, word.size() - end.size());
        }
        return std::nullopt;
    }

    // "Zöliakie", "Zöliakiekranke".
    bool are_allergic_people(std::size_t at) const {
        constexpr std::size_t long_enough = 6;  // letters
        const auto begins = [&](const std::string& listed) {
            return listed.size() >= long_enough && words_[at].starts_with(hazard_fold(listed));
        };
        const auto& all = knowledge_.listed(WordList::allergic_people);
        return listed(at, at + 1, WordList::allergic_people) || std::any_of(all.begin(), all.end(), begins);
    }

    void of_allergy(std::size_t at, MustGoWithout& found) const {
        if (are_allergic_people(at)) {
            if (is_denied(at)) return;
            found.said = true;
            const Kind* kind = kind_said(words_[at], knowledge_);  // "favism"
            return add_name(found.foods, kind ? kind->names.front() : std::string(gluten));
        }
        const std::size_t length = phrase_of(at, WordList::allergy_word, 3);
        const auto compound = length > 0 ? std::nullopt : before_ending(words_[at], WordList::allergy_ending);
        if ((length == 0 && !compound) || is_denied(at)) return;
        found.said = true;
        if (compound)
            for (const auto& name : within(*compound)) add_name(found.foods, name);
        const std::size_t begin = clause_begin(at), end = clause_end(at);
        for (const auto& name : allergens_between(begin, end)) add_name(found.foods, name);
        if (found.foods.empty())
            for (const auto& name : foods_between(std::min(end, at + std::max<std::size_t>(length, 1)), end)) add_name(found.foods, name);
        if (found.foods.empty())
            for (const auto& name : allergens_between(0, words_.size())) add_name(found.foods, name);
    }

    // "Avoid leaving butter out": the cook is told how to work.
    bool is_of_work(std::size_t at) const {
        constexpr std::size_t longer_than_a_noun = 5;  // letters
        return at < words_.size() && words_[at].size() > longer_than_a_noun && words_[at].ends_with("ing") && food_at(at, at + 1).empty();
    }

    // "Cannot have milk", "darf keine Nüsse", "verträgt Milch nicht".
    void of_what_nobody_eats(std::size_t at, MustGoWithout& found) const {
        WordRow names;
        if (const auto length = phrase_of(at, WordList::cannot_eat, longest_phrase); length > 0 && !is_of_work(at + length)) {
            const std::size_t from = at + length, end = clause_end(from);
            names = allergens_between(from, end);
            if (names.empty()) names = foods_between(from, end);
        } else if (listed(at, at + 1, WordList::bears_food)) {
            const std::size_t begin = clause_begin(at), end = clause_end(at);
            for (std::size_t i = begin; i < end; ++i)
                if (is_denial(i)) names = allergens_between(begin, end);
        }
        for (const auto& name : names) add_name(found.foods, name);
        found.said = found.said || !names.empty();
    }

    // "Sesame would put my son in hospital", "nuts are off limits".
    void of_harm(std::size_t at, MustGoWithout& found) const {
        if (phrase_of(at, WordList::harms_somebody, 3) == 0) return;
        const auto names = allergens_between(clause_begin(at), clause_end(at));
        for (const auto& name : names) add_name(found.foods, name);
        found.said = found.said || !names.empty();
    }

    // "Our Muslim guests", "eats halal", "kosher please"; but the recipe of a neighbour feeds nobody, and kosher salt is a salt.
    void of_a_creed(std::size_t at, WordList creed, std::string_view kind, MustGoWithout& found) const {
        const std::size_t length = phrase_of(at, creed, 2);
        const bool denied = at > 0 && contains(knowledge_.records().lexicon.denials.before, words_[at - 1]);
        if (length == 0 || denied || standin::only_sounds_so(words_, at, at + length, knowledge_)) return;
        if (says_any(WordList::thing_of_kin, 1) || names_a_food(at + length)) return;
        bool eaters = says_any(WordList::asks_kindly, 3);
        for (std::size_t i = 0; i < words_.size(); ++i)
            eaters = eaters || listed(i, i + 1, WordList::person_word) || listed(i, i + 1, WordList::for_guests) ||
                     listed(i, i + 1, WordList::kin_who_eat) || (i < at && phrase_of(i, WordList::lives_by, 3) > 0);
        if (!eaters) return;
        found.said = true;
        add_name(found.foods, std::string(kind));
    }

    bool names_a_food(std::size_t at) const { return at < words_.size() && !food_at(at, at + 1).empty(); }

    // Somebody by name or by what they are to the maker, at once behind a word for "for".
    bool are_people(std::size_t at) const {
        if (!listed(at, at + 1, WordList::for_kin)) return false;
        if (listed(at + 1, at + 2, WordList::person_word) || !guests_in(said_words(words_, at, words_.size()), knowledge_).empty())
            return true;
        for (std::size_t begin = 0; begin < text_.size();) {
            const auto end = std::min(text_.find(' ', begin), text_.size());
            if (hazard_fold(text_.substr(begin, end - begin)) == words_[at] && begins_large(text_.substr(std::min(end + 1, text_.size()))))
                return true;
            begin = end + 1;
        }
        return false;
    }

    // "Gluten-free flour" is a food that is bought so.
    bool is_a_food_sold_so(std::size_t at) const {
        if (at > 0 && listed(at - 1, at + 1, WordList::no_promise)) return true;  // "free range"
        for (std::size_t end = at + 1; end <= std::min(words_.size(), at + 3); ++end)
            if (knowledge_.ingredient_named(said_words(words_, at, end)) || knowledge_.ingredient_meant(said_words(words_, at, end)))
                return true;
        return false;
    }

    bool may_promise() const {
        for (std::size_t at = 0; at < words_.size(); ++at)
            if (is_denial(at) || knowledge_.in_list_as_written(WordList::title_without, words_[at]) ||
                knowledge_.in_list_as_written(WordList::title_is_free, words_[at]) || phrase_of(at, WordList::title_free_of, 2) > 0 ||
                before_ending(words_[at], WordList::free_ending))
                return true;
        return false;
    }

    // "No nuts", "pas de noix", "without any nuts".
    bool is_led_by_denial(std::size_t at) const {
        while (at > 0 && contains(knowledge_.records().lexicon.denials.between, words_[at - 1])) --at;
        return at > 0 && (knowledge_.in_list_as_written(WordList::title_without, words_[at - 1]) || is_denial(at - 1));
    }

    // "Für Lena ohne Nüsse", "no sesame please".
    bool is_for_somebody(std::size_t at) const {
        for (std::size_t before = 0; before < at; ++before)
            if (are_people(before)) return true;
        return says_any(WordList::asks_kindly, 3);
    }

    // "Must be free of sesame", "nut-free please", "no nuts for Ben".
    void of_a_promise(std::size_t at, MustGoWithout& found) const {
        if (const auto bare = before_ending(words_[at], WordList::free_ending); bare && !is_led_by_denial(at) && !is_a_food_sold_so(at + 1))
            if (const Kind* kind = kind_said(*bare, knowledge_); kind && names_an_allergen(*kind, knowledge_)) {
                found.said = true;
                add_name(found.foods, kind->names.front());
            }
        for (std::size_t end = std::min(words_.size(), at + longest_name); end > at; --end) {
            const WordRow names = names_at(at, end);
            if (names.empty()) continue;
            const bool free = end < words_.size() && knowledge_.in_list_as_written(WordList::title_is_free, words_[end]) &&
                              !is_led_by_denial(at) && !is_a_food_sold_so(end + 1);
            const bool freed = at >= 2 && knowledge_.in_list(WordList::title_free_of, fold(said_words(words_, at - 2, at))) &&
                               !(at >= 3 && is_denial(at - 3));
            if (free || freed || (is_led_by_denial(at) && (are_people(end) || is_for_somebody(at)))) {
                found.said = true;
                for (const auto& name : names) add_name(found.foods, name);
            }
            return;
        }
    }

    std::string_view text_;
    const Knowledge& knowledge_;
    WordRow words_;
};

}  // namespace

bool MustGoWithout::takes(std::string_view allergen, const Knowledge& knowledge) const {
    return std::any_of(foods.begin(), foods.end(), [&](const std::string& name) {
        const Kind* kind = kind_named(name, knowledge);
        if (kind) return takes_allergen(*kind, allergen, knowledge);
        const auto* food = knowledge.ingredient_named(name);
        return food && is_among(allergen, food->allergens, knowledge);
    });
}

MustGoWithout must_go_without(std::string_view sentence, const Knowledge& knowledge) { return SaidOfWhom(sentence, knowledge).read(); }

}  // namespace standin
