#include "formula/line/making_in_words.hpp"

#include <algorithm>
#include <optional>

#include "core/names.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/lexer/sentences.hpp"
#include "formula/line/method_clauses.hpp"
#include "formula/line/method_facts.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

constexpr std::size_t longest_saying = 4;  // words

std::vector<MethodClause> clauses_in_order(const std::string& sentence, const Knowledge& knowledge) {
    return method_clauses(sentence, WordList::leads_to_the_next, knowledge);
}

// Where a saying of the list begins, from `first` on.
std::optional<std::size_t> said_at(const MethodClause& clause, WordList list, const Knowledge& knowledge, std::size_t first = 0) {
    for (std::size_t i = first; i < clause.words.size(); ++i)
        for (std::size_t last = i + 1; last <= std::min(clause.words.size(), i + longest_saying); ++last)
            if (knowledge.in_list(list, fold(phrase(clause.words, i, last)))) return i;
    return std::nullopt;
}

bool clause_says(const MethodClause& clause, WordList list, const Knowledge& knowledge) {
    return said_at(clause, list, knowledge).has_value();
}

template <class Is>
std::optional<std::size_t> food_at(const MethodClause& clause, const Knowledge& knowledge, Is is) {
    for (std::size_t i = 0; i < clause.words.size(); ++i)
        for (std::size_t last = std::min(clause.words.size(), i + longest_saying); last > i; --last)
            if (const auto* food = knowledge.ingredient_named(phrase(clause.words, i, last)); food && is(*food)) return i;
    return std::nullopt;
}

std::optional<std::size_t> acid_at(const MethodClause& clause, const Knowledge& knowledge) {
    const auto named = food_at(clause, knowledge, [](const Ingredient& food) {
        return food.roles.front() == Role::acid && food.tissue == Tissue::liquid;  // what is poured
    });
    return named ? named : said_at(clause, WordList::sour_word, knowledge);
}

std::optional<std::size_t> salt_at(const MethodClause& clause, const Knowledge& knowledge) {
    return food_at(clause, knowledge, [](const Ingredient& food) { return food.roles.front() == Role::salt; });
}

// The nearest of both before a saying is what it is said of; where only one is in the clause, that one.
bool is_said_of(std::optional<std::size_t> it, std::optional<std::size_t> other, std::size_t saying) {
    if (!it) return false;
    if (!other) return true;
    if (*it > saying) return *other > saying && *it < *other;
    return *other > saying || *it > *other;
}

// What one clause tells by itself: "vinegar last", "first the salt", "the wine before the salt", "steep the meat in lime juice".
std::optional<Order> order_in(const MethodClause& clause, const Knowledge& knowledge) {
    const auto acid = acid_at(clause, knowledge), salt = salt_at(clause, knowledge);
    if (!acid && !salt) return std::nullopt;
    if (acid && salt) {
        const std::size_t one = std::min(*acid, *salt), two = std::max(*acid, *salt);
        const auto between = [&](WordList list) {
            const auto at = said_at(clause, list, knowledge, one);
            return at && *at < two;
        };
        if (between(WordList::goes_before)) return *acid == one ? Order::acid_first : Order::salt_first;
        if (between(WordList::goes_behind)) return *acid == one ? Order::salt_first : Order::acid_first;
    }
    if (const auto last = said_at(clause, WordList::goes_in_last, knowledge)) {
        if (is_said_of(acid, salt, *last)) return Order::salt_first;
        if (is_said_of(salt, acid, *last)) return Order::acid_first;
    }
    if (const auto first = said_at(clause, WordList::goes_in_first, knowledge)) {
        if (is_said_of(acid, salt, *first)) return Order::acid_first;
        if (is_said_of(salt, acid, *first)) return Order::salt_first;
    }
    if (acid && !salt && clause_says(clause, WordList::steeps_meat, knowledge) && clause_says(clause, WordList::mass_word, knowledge))
        return Order::acid_first;
    return std::nullopt;
}

bool works_the_mass(const MethodClause& clause, const Knowledge& knowledge) {
    return clause_says(clause, WordList::mixing_word, knowledge) || clause_says(clause, WordList::binds_when_mixed, knowledge);
}

// By what is done before what: the salt worked in, and something sour in a later clause, or the other way round.
std::optional<Order> order_by_turns(const std::vector<MethodClause>& clauses, const Knowledge& knowledge) {
    std::optional<std::size_t> salt, acid, worked;
    for (std::size_t i = 0; i < clauses.size(); ++i) {
        if (!salt && salt_at(clauses[i], knowledge)) salt = i;
        if (!acid && acid_at(clauses[i], knowledge)) acid = i;
        if (!worked && (salt || acid) && works_the_mass(clauses[i], knowledge)) worked = i;
    }
    if (!salt || !acid || !worked || salt == acid || *worked >= std::max(*salt, *acid)) return std::nullopt;
    return *salt < *acid ? Order::salt_first : Order::acid_first;
}

// Degrees of the mass while it is mixed. What is chilled, kept or cooked at some heat is not mixed at it.
std::optional<double> mixed_at(const MethodClause& clause, const Knowledge& knowledge) {
    constexpr double coldest = -10, warmest = 35;  // C: nobody mixes raw meat outside of it
    for (const auto list : {WordList::cooking_word, WordList::holding_word, WordList::rest_word})
        if (clause_says(clause, list, knowledge)) return std::nullopt;
    if (!works_the_mass(clause, knowledge) && !clause_says(clause, WordList::mass_word, knowledge)) return std::nullopt;
    for (const auto& word : clause.words)
        if (const auto celsius = celsius_at(clause.text, word.begin, knowledge); celsius && *celsius >= coldest && *celsius <= warmest)
            return celsius;
    return std::nullopt;
}

}  // namespace

Process making_in_words(const std::vector<std::string>& method, const Knowledge& knowledge) {
    Process told;
    std::vector<MethodClause> all;
    bool hardly = false, binds = false;
    for (const auto& text : method)
        for (const auto& sentence : sentences_of(text)) {
            auto clauses = clauses_in_order(sentence, knowledge);
            const bool mixes = std::any_of(clauses.begin(), clauses.end(), [&](const MethodClause& clause) {
                return works_the_mass(clause, knowledge) || clause_says(clause, WordList::hardly_mixed, knowledge);
            });
            for (auto& clause : clauses) {
                hardly = hardly || clause_says(clause, WordList::hardly_mixed, knowledge);
                if (clause_says(clause, WordList::not_done_word, knowledge)) continue;
                binds = binds || clause_says(clause, WordList::binds_when_mixed, knowledge);
                if (const auto order = order_in(clause, knowledge)) told.order = order;
                if (const auto celsius = mixes ? mixed_at(clause, knowledge) : std::nullopt) told.mixed_at_c = celsius;
                all.push_back(std::move(clause));
            }
        }
    // Worked until it is sticky and no longer is worked enough.
    if (binds || hardly) told.mixing_min = knowledge.parameter(binds ? "reading.mixed-until-it-binds" : "reading.mixed-hardly").mid;
    if (!told.order) told.order = order_by_turns(all, knowledge);
    return told;
}

bool steeps_meat_in_acid(std::string_view sentence, const Knowledge& knowledge) {
    for (const auto& clause : clauses_in_order(std::string(sentence), knowledge))
        if (acid_at(clause, knowledge) && !salt_at(clause, knowledge) && clause_says(clause, WordList::steeps_meat, knowledge) &&
            !clause_says(clause, WordList::not_done_word, knowledge))
            return true;
    return false;
}

}  // namespace standin
