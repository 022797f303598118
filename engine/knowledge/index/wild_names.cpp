#include "knowledge/index/wild_names.hpp"

#include <algorithm>
#include <optional>
#include <string>

#include "core/names.hpp"
#include "knowledge/records/tissue.hpp"
#include "knowledge/records/word_list.hpp"
#include "knowledge/words/hazard_text.hpp"

namespace standin {
namespace {

constexpr std::size_t least_letters = 4;  // of an ending, and of a word that is held against a poison

bool is_plant_of_looks(const Ingredient& food) {
    return food.tissue == Tissue::fungus || is_leaf(food.tissue) || food.family == "herbs" || food.family == "leaf-greens";
}

// How many letters `folded` is off the nearest name of `known`; none where it is no slip of the pen. Two letters off a name of six may be
// one, as long as no poison is as near.
std::optional<std::size_t> letters_off(const std::string& folded, const Ingredient& known) {
    constexpr std::size_t of_two = 6;
    const std::size_t limit = std::max<std::size_t>(slip_limit(folded), folded.size() >= of_two ? 2 : 1);
    std::optional<std::size_t> nearest;
    for (const auto& name : known.names) {
        const std::size_t off = edit_distance(folded, fold(name), limit);
        if (off <= limit && (!nearest || off < *nearest)) nearest = off;
    }
    return nearest;
}

bool holds_name_of(const std::string& folded, const Ingredient& known) {
    return std::any_of(known.names.begin(), known.names.end(),
                       [&](const std::string& name) { return (" " + folded + " ").find(" " + fold(name) + " ") != std::string::npos; });
}

// By no more than `most` letters, or by what a slip of the pen is.
bool is_near_a_poison(std::string_view name, std::optional<std::size_t> most, const Knowledge& knowledge) {
    for (const auto& word : hazard_text(name).words) {
        if (word.size() < least_letters) continue;
        const std::size_t limit = most.value_or(slip_limit(word));
        for (const auto& hazard : knowledge.records().lexicon.hazards) {
            if (hazard.act != HazardAct::refuse || hazard.kind != "poison" || !hazard.of.empty()) continue;
            for (const auto& pattern : hazard.words) {
                if (pattern.find(' ') != std::string::npos) continue;
                std::string bare = pattern;
                std::erase(bare, '*');
                if (bare.size() < least_letters) continue;
                if (edit_distance(word, bare, limit) <= limit) return true;
            }
        }
    }
    return false;
}

}  // namespace

bool looks_gathered(std::string_view name, const Knowledge& knowledge) {
    const auto words = hazard_text(name).words;
    for (std::size_t at = 0; at < words.size(); ++at) {
        if (knowledge.in_list(WordList::wild_name, fold(words[at]))) return true;
        if (at + 1 < words.size() && knowledge.in_list(WordList::wild_name, fold(words[at] + " " + words[at + 1]))) return true;
        for (const auto& listed : knowledge.listed(WordList::wild_name)) {
            const std::string end = hazard_fold(listed);
            if (end.size() >= least_letters && words[at].size() > end.size() + 1 && words[at].ends_with(end)) return true;
        }
    }
    return false;
}

bool may_be_offered(std::string_view name, const Ingredient& known, const Knowledge& knowledge) {
    const std::string folded = fold(name);
    const auto off = letters_off(folded, known);
    const bool fits = off || (!looks_gathered(name, knowledge) && (!is_plant_of_looks(known) || holds_name_of(folded, known)));
    return fits && !is_near_a_poison(name, off, knowledge);
}

}  // namespace standin
