#include "adapt/moves/named_in_title.hpp"

#include <algorithm>
#include <vector>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

std::string last_word(const std::string& folded) {
    const auto space = folded.rfind(' ');
    return space == std::string::npos ? folded : folded.substr(space + 1);
}

std::vector<std::string> words_of(const std::string& folded) {
    std::vector<std::string> words;
    for (std::size_t from = 0; from < folded.size();) {
        const auto to = std::min(folded.find(' ', from), folded.size());
        if (to > from) words.push_back(folded.substr(from, to - from));
        from = to + 1;
    }
    return words;
}

// "Fenugreek" of the greens, the leaves or the tops; empty where the last word tells no leaf.
std::string leaf_stem(const std::string& folded, const Knowledge& knowledge) {
    const auto space = folded.rfind(' ');
    if (space == std::string::npos || !knowledge.in_list(WordList::stock_leaf_part, folded.substr(space + 1))) return {};
    return folded.substr(0, space);
}

// "Fenugreek greens" for a food that is called fenugreek leaves.
std::string as_other_leaf(const std::vector<std::string>& title, const std::string& name, const Knowledge& knowledge) {
    const std::string stem = leaf_stem(name, knowledge);
    if (stem.empty() || stem.find(' ') != std::string::npos) return {};
    for (std::size_t i = 0; i + 1 < title.size(); ++i)
        if (title[i] == stem && knowledge.in_list(WordList::stock_leaf_part, title[i + 1])) return stem + " " + title[i + 1];
    return {};
}

// Knoblauchgrillwurst: what stands before the word for a sausage is what it is of.
bool leads_compound(const std::string& name, const std::string& word, const Knowledge& knowledge) {
    constexpr std::size_t long_enough = 4;  // letters, of either: judgement
    if (name.size() < long_enough || word.size() < name.size() + long_enough || !word.starts_with(name)) return false;
    for (std::size_t end = name.size(); end + long_enough <= word.size(); ++end)
        if (knowledge.in_list(WordList::link_word, word.substr(end))) return true;
    return false;
}

const Kind* kind_of_word(std::string_view word, const Knowledge& knowledge) {
    const Kind* kind = kind_named(word, knowledge);
    return kind ? kind : kind_in_any_tongue(word, knowledge);
}

// "Cheese", "chile": what is called so is a food or a kind of food, and no colour or state of it.
bool names_a_food(const std::string& word, const Knowledge& knowledge) {
    constexpr std::size_t long_enough = 4;
    return word.size() >= long_enough &&
           (knowledge.ingredient_named(word) || knowledge.ingredient_meant(word) || kind_of_word(word, knowledge));
}

}  // namespace

std::string named_in_title(std::string_view title, const Ingredient& food, const Knowledge& knowledge) {
    const std::string folded = " " + fold(title) + " ";
    const auto words = words_of(folded);
    std::string whole, of_kind;
    for (const auto& one : food.names) {
        const std::string name = fold(one);
        const bool there = folded.find(" " + name + " ") != std::string::npos ||
                           std::any_of(words.begin(), words.end(), [&](const auto& word) { return leads_compound(name, word, knowledge); });
        if (there && name.size() > whole.size()) whole = name;
        if (const auto leaf = as_other_leaf(words, name, knowledge); leaf.size() > whole.size()) whole = leaf;
        const std::string last = last_word(name);
        if (folded.find(" " + last + " ") != std::string::npos && names_a_food(last, knowledge)) of_kind = last;
    }
    return whole.empty() ? of_kind : whole;
}

bool is_called(std::string_view word, const Ingredient& food, const Knowledge& knowledge) {
    const auto so = [&](const std::string& one) {
        const std::string name = fold(one);
        const std::string leaf = leaf_stem(std::string(word), knowledge);
        return name == word || last_word(name) == word || (!leaf.empty() && contains(words_of(name), leaf));
    };
    if (std::any_of(food.names.begin(), food.names.end(), so)) return true;
    const Kind* kind = kind_of_word(word, knowledge);
    return kind && belongs(food, *kind, knowledge);
}

}  // namespace standin
