#include "safety/title_words.hpp"

#include <algorithm>
#include <array>
#include <set>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "core/words.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/records/word_list.hpp"
#include "knowledge/told/guests.hpp"
#include "knowledge/told/named_ages.hpp"
#include "knowledge/words/hazard_text.hpp"
#include "knowledge/words/said_words.hpp"
#include "safety/wording.hpp"

namespace standin {
namespace {

using TitleText = std::vector<std::string>;

constexpr std::string_view joint = ",";  // a comma, or a word that joins: "and", "oder"

TitleText cut(std::string_view title, const Knowledge& knowledge) {
    TitleText words;
    std::string part;
    const auto take = [&] {
        for (auto& word : hazard_text(part).words)
            words.push_back(knowledge.in_list_as_written(WordList::title_join, word) ? std::string(joint) : word);
        part.clear();
    };
    for (const char c : title) {
        if (c != ',' && c != '/' && c != '&' && c != '+' && c != ';') {
            part += c;
            continue;
        }
        take();
        words.emplace_back(joint);
    }
    take();
    return words;
}

bool stands_at(const TitleText& words, std::size_t at, std::string_view phrase) {
    const TitleText sought = hazard_text(phrase).words;
    return !sought.empty() && at + sought.size() <= words.size() &&
           std::equal(sought.begin(), sought.end(), words.begin() + static_cast<std::ptrdiff_t>(at));
}

// The first of a list's phrases that stands there; empty where none does.
std::string_view phrase_at(const TitleText& words, std::size_t at, WordList list, const Knowledge& knowledge) {
    for (const auto& phrase : knowledge.listed(list))
        if (stands_at(words, at, phrase)) return phrase;
    return {};
}

bool denies(const std::string& word, const Knowledge& knowledge) { return knowledge.in_list_as_written(WordList::title_without, word); }

}  // namespace

TitleWords::TitleWords(std::string_view title, const Knowledge& knowledge)
    : knowledge_(knowledge), title_(title), words_(cut(title, knowledge)) {}

std::string TitleWords::said(std::size_t first, std::size_t last) const { return said_words(words_, first, last); }

std::vector<TitleWords::Span> TitleWords::spans_of(const Kind& kind) const {
    std::vector<Span> all;
    TitleText names = kind.in_tongues;
    for (const auto& name : kind.names) names.push_back(hazard_fold(name));
    for (const auto& name : names) {
        const TitleText sought = hazard_text(name).words;
        for (std::size_t at = 0; !sought.empty() && at + sought.size() <= words_.size(); ++at)
            if (std::equal(sought.begin(), sought.end(), words_.begin() + static_cast<std::ptrdiff_t>(at), same_word))
                all.push_back({at, at + sought.size()});
    }
    return all;
}

// "No nuts, milk or wheat": back over what is joined to the word that denies. "Not vegan" denies a diet.
bool TitleWords::denied(const Span& span) const {
    std::size_t at = span.first;
    while (at > 0) {
        const std::string& word = words_[at - 1];
        if (denies(word, knowledge_)) return true;
        if (at >= 2 && !phrase_at(words_, at - 2, WordList::title_free_of, knowledge_).empty()) return true;
        // "Without the pig", "ohne das Schwein": an article denies nothing back.
        const bool filler = word == "added" || word == "of" || word == "%" || knowledge_.in_list(WordList::article, fold(word));
        if (filler) {
            --at;
            continue;
        }
        // A comma, and before it one more food that is joined.
        if (word == joint && at >= 2) {
            at -= 2;
            if (at > 0 && denies(words_[at - 1], knowledge_)) return true;
            continue;
        }
        return false;
    }
    return false;
}

std::optional<TitlePromise> TitleWords::promise_at(const Span& span) const {
    if (denied(span)) {
        std::size_t first = span.first;
        while (first > 0 && !denies(words_[first], knowledge_)) --first;
        return TitlePromise{said(first, span.last), false};
    }
    // "Nut and gluten free", "Milch- und glutenfrei".
    std::size_t at = span.last;
    while (at + 1 < words_.size() && words_[at] == joint) {
        at += 2;
        if (at < words_.size() && words_[at] == joint) continue;
        if (at - 1 < words_.size() && words_[at - 1].ends_with("frei")) return TitlePromise{said(span.first, at), false};
    }
    if (at < words_.size() && knowledge_.in_list_as_written(WordList::title_is_free, words_[at]))
        return TitlePromise{said(span.first, at + 1), false};
    if (knowledge_.in_list(WordList::allergic_people, fold(said(span.first, span.last))))
        return TitlePromise{said(span.first, span.last), true};
    if (span.last < words_.size() && knowledge_.in_list_as_written(WordList::title_suits, words_[span.last])) {
        const bool led = span.first >= 2 && !phrase_at(words_, span.first - 2, WordList::title_for_whom, knowledge_).empty();
        return TitlePromise{said(led ? span.first - 2 : span.first, span.last + 1), true};
    }
    for (std::size_t back = 2; back <= 4 && back <= span.first; ++back)
        if (!phrase_at(words_, span.first - back, WordList::title_for_whom, knowledge_).empty())
            return TitlePromise{said(span.first - back, span.last), true};
    return std::nullopt;
}

// "nutfree", "glutenfrei", "meatless", "uncured", "bezglutenowa", "mælkefri".
std::optional<TitlePromise> TitleWords::joined_promise(const Kind& kind) const {
    for (const auto& pattern : kind.free)
        for (std::size_t at = 0; at < words_.size(); ++at)
            if (const auto count = fits_at(pattern, words_, at)) return TitlePromise{said(at, at + count), false};
    const auto& ends = knowledge_.listed(WordList::free_ending);
    TitleText names = kind.in_tongues;
    for (const auto& name : kind.names) names.push_back(hazard_fold(name));
    for (const auto& word : words_)
        for (const auto& name : names) {
            const bool behind = std::any_of(ends.begin(), ends.end(), [&](const std::string& end) {
                return word == name + end || word == name + "s" + end || word == name + "n" + end || word == name + end + "e";
            });
            if (behind || (kind.id == "nuts" && knowledge_.in_list(WordList::free_of_nuts, fold(word))) ||
                (kind.id == "cured" && word == "un" + name))
                return TitlePromise{word, false};
        }
    return std::nullopt;
}

// "Not vegan", "not for children".
bool TitleWords::is_not_for_them(const Span& span) const {
    std::size_t at = span.first;
    while (at > 0 && knowledge_.in_list(WordList::for_guests, fold(words_[at - 1]))) --at;
    return at > 0 && (words_[at - 1] == "not" || (at < span.first && denies(words_[at - 1], knowledge_)));
}

// Those of an age that germs harm more; the names of people have their capitals only in the title as it was written.
std::string TitleWords::who_eats() const {
    auto named = named_age_in(title_, knowledge_);
    return named.empty() ? old_or_small_in(said(0, words_.size()), knowledge_) : named;
}

std::optional<TitlePromise> TitleWords::promise_of(const Kind& kind) const {
    const auto spans = spans_of(kind);
    if (kind.diet) {
        for (const auto& span : spans)
            if (!denied(span) && !only_sounds_so(words_, span.first, span.last, knowledge_) && !is_not_for_them(span) &&
                !is_possessive_name(title_, said(span.first, span.last), knowledge_))
                return TitlePromise{said(span.first, span.last), false};
        const auto others = kind.id == "frail-eaters" ? who_eats() : std::string();
        return others.empty() ? std::nullopt : std::optional(TitlePromise{others, false});
    }
    for (const auto& span : spans)
        if (auto found = promise_at(span)) return found;
    return joined_promise(kind);
}

std::string TitleWords::words_in(WordList list) const {
    constexpr std::size_t longest = 3;  // words
    for (std::size_t first = 0; first < words_.size(); ++first)
        for (std::size_t last = std::min(words_.size(), first + longest); last > first; --last)
            if (words_[first] != joint && words_[last - 1] != joint &&
                !(last < words_.size() && knowledge_.in_list_as_written(WordList::of_the_mind, words_[last])) &&
                knowledge_.in_list(list, fold(said(first, last))))
                return said(first, last);
    return {};
}

std::string TitleWords::named(const Kind& kind) const {
    // "Duck egg", "goose fat", "hog casing", "lamb's lettuce": not what it is made of. "Chicken of the woods" is a fungus.
    for (const auto& span : spans_of(kind)) {
        const bool of_other = span.last < words_.size() &&
                              (knowledge_.in_list_as_written(WordList::not_made_of, words_[span.last]) || words_[span.last] == "s");
        const bool like =
            span.first > 0 && (words_[span.first - 1] == "like" || words_[span.first - 1] == "not" || words_[span.first - 1] == "mock");
        if (!of_other && !like && !denied(span) && !promise_at(span)) return said(span.first, span.last);
    }
    return {};
}

std::optional<std::string> promise_of_no_allergen(std::string_view title, const Knowledge& knowledge) {
    const std::string folded = " " + hazard_fold(title) + " ";
    for (const auto& phrase : knowledge.listed(WordList::no_allergen_promise))
        if (folded.find(" " + phrase + " ") != std::string::npos) return phrase;
    return std::nullopt;
}

namespace {

constexpr std::array<std::string_view, 13> beasts{"pork", "beef",   "veal",    "lamb",   "goat", "venison", "wild-boar",
                                                  "game", "rabbit", "chicken", "turkey", "duck", "goose"};

// Meat, and fat that was melted off it.
bool is_of_a_beast(const Ingredient& food, const Knowledge& knowledge) {
    if (food.meat) return true;
    return !food.roles.empty() && food.roles.front() == Role::fat && std::any_of(beasts.begin(), beasts.end(), [&](std::string_view id) {
        const Kind* kind = kind_of(id, knowledge);
        return kind && belongs(food, *kind, knowledge);
    });
}

CautionText animal_caution(ReasonKind kind, const std::string& animals, std::vector<std::string> foods) {
    Reason reason = make_reason(kind, {}, std::move(foods));
    reason.about = "title-animal";
    reason.role = animals;
    return caution_text(std::move(reason), "us-9cfr-317-8", {}, (kind == ReasonKind::title_beside_animal ? "beside " : "") + animals);
}

}  // namespace

std::vector<CautionText> other_animals(const Formula& formula, const TitleWords& title, const Knowledge& knowledge) {
    std::vector<const Kind*> named;
    TitleText words;
    for (const auto id : beasts)
        if (const Kind* kind = kind_of(id, knowledge))
            if (std::string word = title.named(*kind); !word.empty()) named.push_back(kind), words.push_back(std::move(word));
    std::vector<CautionText> all;
    if (named.empty()) return all;
    TitleText others;
    std::set<const Kind*> there;
    for (const auto& line : formula.lines) {
        const Ingredient& food = *knowledge.ingredient(line.ingredient);
        if (!is_of_a_beast(food, knowledge)) continue;
        bool told = false;
        for (const auto* kind : named)
            if (belongs(food, *kind, knowledge)) {
                told = true;
                if (food.meat) there.insert(kind);
            }
        if (!told && !contains(others, food.names.front())) others.push_back(food.names.front());
    }
    for (std::size_t i = 0; i < named.size(); ++i)
        if (!there.count(named[i])) all.push_back(animal_caution(ReasonKind::title_without_animal, words[i], others));
    if (all.empty() && !others.empty()) all.push_back(animal_caution(ReasonKind::title_beside_animal, listed(words), others));
    return all;
}

std::vector<std::string> said_of_guests(const std::vector<Reason>& read_as) {
    std::vector<std::string> all;
    for (const auto& told : read_as)
        if (told.kind == ReasonKind::of_the_recipe && told.role == said_of_guests_role)
            all.insert(all.end(), told.foods.begin(), told.foods.end());
    return all;
}

std::string words_of_guests(const std::vector<std::string>& texts, const Knowledge& knowledge) {
    for (const auto& text : texts)
        if (auto words = guests_in(text, knowledge); !words.empty()) return words;
    return {};
}

}  // namespace standin
