#include "formula/food/first_of_two.hpp"

#include <algorithm>
#include <cctype>

#include "core/contains.hpp"
#include "formula/food/name_text.hpp"
#include "formula/lexer/digits.hpp"
#include "formula/lexer/line_words.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

constexpr std::size_t longest_food = 5;  // words

const Ingredient* food_in(std::string_view text, const Knowledge& knowledge) {
    const auto words = words_of(text);
    for (std::size_t length = std::min(longest_food, words.size()); length > 0; --length)
        for (std::size_t first = 0; first + length <= words.size(); ++first) {
            const std::string name = phrase(words, first, first + length);
            if (const auto* found = known_ingredient(name, knowledge)) return found;
            if (const auto* meant = knowledge.ingredient_meant(name)) return meant;
        }
    return nullptr;
}

// "lemon or lime juice": the word that both share goes with the first too.
std::string shared_end(const std::vector<Word>& words, std::size_t joint, std::size_t end, const Knowledge& knowledge) {
    for (std::size_t from = joint + 2; from < end; ++from)
        for (std::size_t first = joint - std::min<std::size_t>(joint, 3); first < joint; ++first)
            if (known_ingredient(phrase(words, first, joint) + " " + phrase(words, from, end), knowledge)) return phrase(words, from, end);
    return {};
}

// "200 g chard (or kale), blanched" as "200 g chard or kale, blanched".
std::string without_brackets_of_choice(std::string_view line, const Knowledge& knowledge) {
    constexpr std::string_view opening = "(or ";
    std::string plain(line);
    for (auto open = plain.find(opening); open != std::string::npos; open = plain.find(opening, open + 1)) {
        const auto close = plain.find(')', open);
        if (close == std::string::npos) break;
        const std::string other = plain.substr(open + opening.size(), close - open - opening.size());
        if (!knowledge.ingredient_named(other) && !knowledge.ingredient_meant(other)) continue;
        plain.erase(close, 1);
        plain.erase(open, 1);
    }
    return plain;
}

}  // namespace

std::vector<FirstOfTwo> firsts_of_two(std::string_view written, const Knowledge& knowledge) {
    const std::string line = without_brackets_of_choice(written, knowledge);
    const auto words = words_of(line);
    if (std::any_of(words.begin(), words.end(),
                    [&](const Word& word) { return knowledge.in_list(WordList::denies_a_choice, word.folded); }))
        return {};
    std::vector<FirstOfTwo> all;
    for (std::size_t i = 1; i + 1 < words.size(); ++i) {
        const std::string before = line.substr(0, words[i].begin);
        if (words[i].folded != "or" || std::count(before.begin(), before.end(), '(') > std::count(before.begin(), before.end(), ')'))
            continue;
        std::size_t end = i + 1;
        while (end < words.size() && words[end].segment == words[i + 1].segment) ++end;
        std::string head(line.substr(0, words[i - 1].end));
        for (std::size_t at = 0; at < i; ++at)  // "either chard or kale"
            if (words[at].folded == "either") std::fill_n(head.begin() + static_cast<std::ptrdiff_t>(words[at].begin), 6, ' ');
        const std::string rest(line.substr(words[end - 1].end));
        const std::string other(line.substr(words[i + 1].begin, words[end - 1].end - words[i + 1].begin));
        const std::string shared = shared_end(words, i, end, knowledge);
        if (!shared.empty()) all.push_back({head + " " + shared + rest, other});
        else if (!knowledge.in_list(WordList::takes_its_kind, words[end - 1].folded) ||
                 knowledge.in_list(WordList::takes_its_kind, words[i - 1].folded))
            all.push_back({head + rest, other});
        return all;
    }
    return all;
}

bool may_take_first(const FirstOfTwo& first, const ReadLine& read, const Knowledge& knowledge) {
    const Ingredient& taken = *knowledge.ingredient(read.line.ingredient);
    const Ingredient* second = food_in(first.other, knowledge);
    if (!second) {  // "1 tsp dried thyme or 1 tbsp fresh"
        const auto words = words_of(first.other);
        return std::all_of(words.begin(), words.end(), [&](const Word& word) {
            return knowledge.in_list(WordList::tells_form, word.folded) || unit_named(word.folded) ||
                   std::isdigit(static_cast<unsigned char>(word.raw.front())) != 0;
        });
    }
    constexpr double fat = 60;  // g in 100 g, judgement
    if (taken.meat && second->meat) return taken.composition.fat.mid >= fat && second->composition.fat.mid >= fat;
    if (has_digit(first.other)) return false;  // "or about 200 ml wine"
    return taken.family == second->family || taken.tissue == second->tissue || taken.roles.front() == second->roles.front();
}

void tell_of_second(const FirstOfTwo& first, ReadLine& read, const Knowledge& knowledge) {
    const Ingredient& taken = *knowledge.ingredient(read.line.ingredient);
    if (const Ingredient* second = food_in(first.other, knowledge))
        for (const auto& allergen : second->allergens) {
            const bool told =
                contains(taken.allergens, allergen) || std::any_of(read.line.declared.begin(), read.line.declared.end(),
                                                                   [&](const Declared& one) { return one.allergen == allergen; });
            if (!told) read.line.declared.push_back({allergen, "or " + first.other});
        }
    Reason told = reason_about(ReasonKind::first_of_two, taken.names.front() + " or " + first.other, {taken.names.front()});
    read.doubts.push_back({Confidence::unsure, told, true});
    read.line.notes.push_back(std::move(told));
}

}  // namespace standin
