#include "knowledge/guests.hpp"

#include <algorithm>
#include <vector>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "knowledge/hazard_text.hpp"
#include "knowledge/kinds.hpp"
#include "knowledge/word_list.hpp"

namespace standin {
namespace {

using Sentence = std::vector<std::string>;

constexpr std::string_view eaters_kind = "frail-eaters";

struct Named {
    std::size_t first = 0, last = 0;  // words
};

std::string said(const Sentence& words, std::size_t first, std::size_t last) {
    std::string out;
    for (std::size_t i = first; i < std::min(last, words.size()); ++i) out += (out.empty() ? "" : " ") + words[i];
    return out;
}

bool same_word(const std::string& a, const std::string& b) { return a == b || fold(a) == fold(b); }

// The longest name that stands at a word.
Named named_at(const Sentence& words, std::size_t at, const Kind& kind) {
    Named best{at, at};
    const auto look = [&](const std::string& name) {
        const Sentence sought = hazard_text(name).words;
        if (sought.empty() || at + sought.size() > words.size() || at + sought.size() <= best.last) return;
        if (std::equal(sought.begin(), sought.end(), words.begin() + static_cast<std::ptrdiff_t>(at), same_word))
            best.last = at + sought.size();
    };
    for (const auto& name : kind.names) look(name);
    for (const auto& name : kind.in_tongues) look(name);
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

// "Baby spinach", "old school", "school fair": a food, a manner, a feast.
bool is_of_a_name(const Sentence& words, const Named& named, const Knowledge& knowledge) {
    constexpr std::size_t reach = 3;  // words
    const auto in = [&](WordList list, std::size_t at) { return knowledge.in_list(list, fold(words[at])); };
    const std::size_t end = std::min(words.size(), named.last + reach);
    for (std::size_t at = named.last; at < end; ++at)
        if (in(WordList::eaters_kitchen, at)) return false;
    if (named.last < words.size() && knowledge.in_list(WordList::no_promise, fold(said(words, named.first, named.last + 1)))) return true;
    if (named.first > 0 && knowledge.in_list(WordList::no_promise, fold(said(words, named.first - 1, named.last)))) return true;
    for (std::size_t at = named.last; at < end; ++at)
        if (in(WordList::feast_or_street, at)) return true;
    return false;
}

// A school or a hospital is where people eat only where the sentence says before that it is for them, or tells of a meal behind.
bool is_fed(const Sentence& words, const Named& named, const Knowledge& knowledge) {
    if (!knowledge.in_list(WordList::place_of_guests, fold(said(words, named.first, named.last)))) return true;
    const auto behind = words.begin() + static_cast<std::ptrdiff_t>(named.last);
    return std::any_of(words.begin(), words.begin() + static_cast<std::ptrdiff_t>(named.first),
                       [&](const std::string& word) { return knowledge.in_list(WordList::for_guests, fold(word)); }) ||
           std::any_of(behind, behind + std::min<std::ptrdiff_t>(2, words.end() - behind),
                       [&](const std::string& word) { return knowledge.in_list(WordList::eaters_kitchen, fold(word)); });
}

}  // namespace

std::string guests_in(std::string_view sentence, const Knowledge& knowledge) {
    const Kind* kind = kind_of(eaters_kind, knowledge);
    if (!kind) return {};
    const Sentence words = hazard_text(sentence).words;
    for (std::size_t at = 0; at < words.size(); ++at) {
        const Named named = named_at(words, at, *kind);
        if (named.last == at) continue;
        if (!is_denied_to_them(words, at, knowledge) && !is_of_a_name(words, named, knowledge) && is_fed(words, named, knowledge))
            return said(words, named.first, named.last);
        at = named.last - 1;
    }
    return {};
}

}  // namespace standin
