#include "safety/left_out_words.hpp"

#include <algorithm>
#include <cctype>
#include <vector>

#include "core/names.hpp"
#include "core/words.hpp"
#include "knowledge/index/kinds.hpp"

namespace standin {
namespace {

std::vector<std::string> cut_at(std::string_view text, std::string_view between) {
    std::vector<std::string> parts;
    for (std::size_t at = 0; at <= text.size();) {
        const auto end = std::min(text.find(between, at), text.size());
        parts.emplace_back(text.substr(at, end - at));
        at = end + between.size();
    }
    return parts;
}

// The words of a text, folded, without what stands between them.
std::vector<std::string> spelt_words(std::string_view text) {
    std::string folded = fold(text);
    for (auto& c : folded)
        if (std::ispunct(static_cast<unsigned char>(c)) && c != '-') c = ' ';
    std::vector<std::string> words;
    for (auto& word : cut_at(folded, " "))
        if (!word.empty()) words.push_back(std::move(word));
    return words;
}

std::string one_of_them(const std::string& word) { return word.size() > 3 && word.back() == 's' ? word.substr(0, word.size() - 1) : word; }

bool names_one_left_out(const std::string& name, const MayBeNamed& may_be_named, const Knowledge& knowledge) {
    if (const Ingredient* food = knowledge.ingredient_named(name)) return !may_be_named(*food);
    const Kind* kind = kind_named(name, knowledge);
    if (!kind) return false;
    bool any = false;
    for (const auto& food : knowledge.records().ingredients) {
        if (!belongs(food, *kind, knowledge)) continue;
        if (may_be_named(food)) return false;
        any = true;
    }
    return any;
}

}  // namespace

bool names_what_is_left_out(std::string_view text, const MayBeNamed& may_be_named, const Knowledge& knowledge) {
    constexpr std::size_t longest = 3;  // words of a name
    const auto words = spelt_words(text);
    for (std::size_t at = 0; at < words.size(); ++at) {
        std::string name;
        for (std::size_t n = 0; n < longest && at + n < words.size(); ++n) {
            name += (n ? " " : "") + words[at + n];
            if (names_one_left_out(name, may_be_named, knowledge) || names_one_left_out(one_of_them(name), may_be_named, knowledge))
                return true;
        }
    }
    return false;
}

std::string without_what_is_left_out(std::string_view advice, const MayBeNamed& may_be_named, const Knowledge& knowledge) {
    std::string kept;
    for (auto sentence : cut_at(advice, ". ")) {
        const bool stops = !sentence.empty() && sentence.back() == '.';
        if (stops) sentence.pop_back();
        std::string left;
        for (const auto& part : cut_at(sentence, "; "))
            if (!part.empty() && !names_what_is_left_out(part, may_be_named, knowledge)) left += (left.empty() ? "" : "; ") + part;
        if (left.empty()) continue;
        // What is a few words in the midst of a sentence stays so.
        if (!std::islower(static_cast<unsigned char>(advice.front())))
            left.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(left.front())));
        kept += (kept.empty() ? "" : " ") + left + ".";
    }
    if (!advice.empty() && advice.back() != '.' && !kept.empty()) kept.pop_back();
    return kept;
}

}  // namespace standin
