#include "formula/line/mere_name.hpp"

#include <algorithm>
#include <array>
#include <cctype>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/lexer/measures.hpp"
#include "formula/line/likeness.hpp"
#include "formula/line/line_asides.hpp"
#include "knowledge/hazard_text.hpp"
#include "knowledge/kinds.hpp"

namespace standin {
namespace {

constexpr std::size_t longest_mere_name = 2;  // words
constexpr std::size_t shortest_of_name = 3;   // letters: shorter ones join or deny

bool opens_as_name(const Word& word) { return std::isupper(static_cast<unsigned char>(word.raw.front())) != 0; }

bool of_letters_only(const Word& word) {
    return word.folded.size() >= shortest_of_name && std::all_of(word.raw.begin(), word.raw.end(), [](char c) {
               return std::isalpha(static_cast<unsigned char>(c)) != 0 || static_cast<unsigned char>(c) >= 0x80;
           });
}

// What was done to it, in the tongues of the lexicon: "soured", "turning", "vergoren", "andato", "passé"; and "whiffy".
bool ends_as_what_was_done(const std::string& word) {
    constexpr std::array<std::string_view, 34> ends{"ed",   "ing", "ied", "y",   "ish", "ado", "ada", "ados", "adas", "ido", "ida", "idos",
                                                    "idas", "ato", "ata", "ati", "ate", "uto", "uta", "uti",  "ute",  "ito", "ita", "iti",
                                                    "tto",  "tta", "ig",  "end", "ade", "nny", "any", "ony",  "iony", "ie"};
    if (word.size() > 5 && word.starts_with("ge") && (word.ends_with("t") || word.ends_with("en") || word.ends_with("d"))) return true;
    if (word.size() > 5 && word.starts_with("ver") && (word.ends_with("t") || word.ends_with("en"))) return true;
    return word.size() > 4 && std::any_of(ends.begin(), ends.end(), [&](std::string_view end) { return word.ends_with(end); });
}

// The French participle keeps its accent until it is folded.
bool ends_in_accent(const std::string& raw) {
    return raw.ends_with("é") || raw.ends_with("ée") || raw.ends_with("és") || raw.ends_with("ées");
}

bool may_be_harm(const Word& word, const Knowledge& knowledge) {
    const auto& lexicon = knowledge.records().lexicon;
    const std::string folded = hazard_fold(word.raw);
    return contains(lexicon.joins, folded) || fits_any(lexicon.holds, folded) || fits_any(lexicon.handles, folded) ||
           contains(lexicon.denials.before, folded) || contains(lexicon.denials.after, folded) ||
           !hazards_in(hazard_text(word.raw), lexicon).empty() || !near_danger(word.raw, knowledge).empty() ||
           knowledge.in_list("never-aside", word.folded) || knowledge.in_list("stock-none", word.folded) ||
           knowledge.in_list("stock-no-abroad", word.folded) || knowledge.in_list("stock-none-after", word.folded) ||
           may_tell_of_state(word.raw, knowledge);
}

bool means_more_than_a_name(const Word& word, const Knowledge& knowledge) {
    return changes_food(word.folded, knowledge) || names_a_kind(word.folded, knowledge) || knowledge.in_list("another-kind", word.folded) ||
           unit_named(word.folded) || knowledge.ingredient_named(word.raw) || knowledge.preparation_named(word.raw);
}

// Of these a remark in small letters is always asked about: how it is may matter more than how it is called.
bool is_plant_food(const Ingredient& food) {
    constexpr std::array<std::string_view, 9> families{"leaf-greens", "herbs",  "fresh-chiles", "vegetables",    "sour-fruit",
                                                       "alliums",     "spices", "dried-chiles", "nuts-and-seeds"};
    return !food.meat && contains(families, std::string_view(food.family));
}

}  // namespace

bool may_tell_of_state(std::string_view word, const Knowledge& knowledge) {
    const std::string said = hazard_fold(word);
    const auto& listed = knowledge.records().lexicon.listed;
    return std::any_of(listed.begin(), listed.end(), [&](const auto& one) {
        if (one.list != "tells-of-state") return false;
        const std::string_view stem = one.word;
        return stem.ends_with('*') ? said.starts_with(hazard_fold(stem.substr(0, stem.size() - 1))) : said == hazard_fold(stem);
    });
}

std::vector<bool> mere_names(std::string_view said, const Ingredient& food, std::string_view written, const Knowledge& knowledge) {
    const auto words = words_of(said);
    std::vector<bool> names(words.size(), false);
    if (said.find_first_of("0123456789") != std::string_view::npos) return names;  // "1,000,000 SHU"
    if (std::any_of(words.begin(), words.end(), [&](const Word& word) { return may_be_harm(word, knowledge); })) return names;
    const bool in_bracket = written.find("(" + std::string(said) + ")") != std::string_view::npos;
    const bool small = in_bracket && words.size() <= longest_mere_name && is_plant_food(food) && !is_each_its_own(food);
    std::size_t capitals = 0;
    for (std::size_t i = 0; i < words.size(); ++i) {
        const Word& word = words[i];
        if (!of_letters_only(word) || means_more_than_a_name(word, knowledge)) continue;
        if (!small && !opens_as_name(word)) continue;
        if (ends_in_accent(word.raw) || (ends_as_what_was_done(word.folded) && !(opens_as_name(word) && i > 0))) continue;
        names[i] = true;
        ++capitals;
    }
    if (capitals > longest_mere_name) names.assign(words.size(), false);
    return names;
}

}  // namespace standin
