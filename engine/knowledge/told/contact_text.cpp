#include "knowledge/told/contact_text.hpp"

#include <algorithm>
#include <array>
#include <string>
#include <vector>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/records/word_list.hpp"
#include "knowledge/words/hazard_text.hpp"

namespace standin {
namespace {

constexpr std::size_t longest_food = 4;  // words

enum class Says { nothing, in_it, near_it };

// At signs between clauses, and at "and" in the tongues of the lexicon.
std::vector<HazardText> pieces_of(std::string_view text) {
    constexpr std::array<std::string_view, 8> joins{"and", "und", "et", "y", "e", "en", "och", "but"};
    std::vector<HazardText> all;
    while (!text.empty()) {
        const auto end = text.find_first_of(",;:()[].");
        const HazardText clause = hazard_text(text.substr(0, end));
        all.emplace_back();
        for (const auto& word : clause.words) {
            if (contains(joins, std::string_view(word))) all.emplace_back();
            else all.back().words.push_back(word);
        }
        text = end == std::string_view::npos ? std::string_view{} : text.substr(end + 1);
    }
    return all;
}

Says said_in(const HazardText& piece, const Knowledge& knowledge) {
    const auto any = [&](auto&& is) { return std::any_of(piece.words.begin(), piece.words.end(), is); };
    if (any([&](const auto& word) {
            return knowledge.in_list(WordList::perhaps_word, fold(word)) || knowledge.in_list(WordList::contact_word, fold(word));
        }))
        return Says::near_it;
    const bool holds = any([&](const auto& word) {
        return fits_any(knowledge.records().lexicon.holds, word) || knowledge.in_list(WordList::put_in, fold(word)) ||
               knowledge.in_list(WordList::has_in_it, fold(word));
    });
    return holds ? Says::in_it : Says::nothing;
}

bool names(const HazardText& piece, std::string_view allergen, const Knowledge& knowledge) {
    const auto found = hazards_in(piece, knowledge.records().lexicon);
    const std::string wanted(allergen);
    if (std::any_of(found.begin(), found.end(), [&](const HazardMatch& match) { return match.hazard->allergen == wanted; })) return true;
    for (std::size_t first = 0; first < piece.words.size(); ++first) {
        std::string name;
        for (std::size_t last = first; last < std::min(piece.words.size(), first + longest_food); ++last) {
            name += (name.empty() ? "" : " ") + piece.words[last];
            const auto* food = knowledge.ingredient_named(name);
            if (food && is_among(wanted, food->allergens, knowledge)) return true;
        }
    }
    return false;
}

}  // namespace

bool is_only_of_contact(std::string_view words, std::string_view allergen, const Knowledge& knowledge) {
    Says says = Says::nothing;
    bool named = false, near = false, in_it = false;
    for (const auto& piece : pieces_of(words)) {
        if (const Says here = said_in(piece, knowledge); here != Says::nothing) says = here;
        near = near || says == Says::near_it;
        in_it = in_it || says == Says::in_it;
        if (!names(piece, allergen, knowledge)) continue;
        if (says != Says::near_it) return false;
        named = true;
    }
    return named || (near && !in_it);
}

}  // namespace standin
