#include "formula/food/told_allergens.hpp"

#include <algorithm>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "formula/food/remark.hpp"
#include "formula/hazards/hazards.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/words/stock_words.hpp"
#include "formula/words/tongues.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/records/word_list.hpp"
#include "knowledge/told/contact_text.hpp"
#include "knowledge/words/hazard_text.hpp"

namespace standin {
namespace {

constexpr std::size_t longest_food = 4;  // words

void add_once(std::vector<NamedAllergen>& all, const std::string& allergen, bool contained) {
    if (std::none_of(all.begin(), all.end(), [&](const NamedAllergen& one) { return one.allergen == allergen; }))
        all.push_back({allergen, contained});
}

void add_foods(std::vector<NamedAllergen>& all, std::string_view said, bool contained, const Knowledge& knowledge) {
    const auto words = words_of(said);
    const HazardText text = hazard_text(said);
    for (std::size_t first = 0; first < words.size();) {
        std::size_t next = first + 1;
        for (std::size_t last = std::min(words.size(), first + longest_food); last > first; --last) {
            const std::string name = phrase(words, first, last);
            const auto* food = food_in_remark(name, knowledge);
            if (!food) continue;
            const std::size_t before = hazard_text(said.substr(0, words[first].begin)).words.size();
            if (!is_denied(text, before, before + hazard_text(name).words.size(), knowledge.records().lexicon))
                for (const auto& allergen : food->allergens)
                    if (!only_sounds_so(text, before, allergen, knowledge.records().lexicon)) add_once(all, allergen, contained);
            next = last;
            break;
        }
        first = next;
    }
}

bool brings(const std::vector<const Ingredient*>& own, const std::string& allergen, const Knowledge& knowledge) {
    return std::any_of(own.begin(), own.end(), [&](const Ingredient* food) {
        return is_among(allergen, food->allergens, knowledge) || (allergen == "sulphite" && food->sulphites.has_value());
    });
}

std::string named_in_words(std::vector<std::string> allergens) {
    std::string out;
    for (auto& one : allergens) {
        std::replace(one.begin(), one.end(), '-', ' ');
        out += (out.empty() ? "" : " and ") + one;
    }
    return out;
}

}  // namespace

std::vector<NamedAllergen> allergens_of_remark(std::string_view said, const Knowledge& knowledge) {
    const auto words = words_of(said);
    const bool contained = std::any_of(words.begin(), words.end(), [&](const Word& word) {
        return knowledge.in_list(WordList::put_in, word.folded) || knowledge.in_list(WordList::has_in_it, word.folded);
    });
    std::vector<NamedAllergen> all;
    for (const auto& named : allergens_named(said, knowledge)) add_once(all, named.allergen, contained);
    add_foods(all, said, contained, knowledge);
    for (const auto& way : in_english(said, knowledge)) add_foods(all, way.text, contained, knowledge);
    for (auto& one : all) one.contained = one.contained && !is_only_of_contact(said, one.allergen, knowledge);
    // What no words of the lexicon name cannot be read back: "black walnut" is told as walnut.
    const auto has_words = [&](const NamedAllergen& one) {
        const auto& hazards = knowledge.records().lexicon.hazards;
        return std::any_of(hazards.begin(), hazards.end(), [&](const Hazard& hazard) { return hazard.allergen == one.allergen; });
    };
    if (std::any_of(all.begin(), all.end(), has_words)) std::erase_if(all, [&](const NamedAllergen& one) { return !has_words(one); });
    return all;
}

std::vector<Declared> declared_beside(std::string_view text, const std::vector<std::string>& sentences, const Knowledge& knowledge) {
    const auto& lexicon = knowledge.records().lexicon;
    const auto tells_content = [&](const HazardText& sentence) {
        return std::any_of(sentence.words.begin(), sentence.words.end(), [&](const std::string& word) {
            return fits_any(lexicon.holds, word) || knowledge.in_list(WordList::has_in_it, fold(word));
        });
    };
    std::vector<Declared> all;
    for (auto& told : declared_in(text, knowledge)) {
        const bool surely = std::any_of(sentences.begin(), sentences.end(), [&](const std::string& sentence) {
            const auto here = declared_in(sentence, knowledge);
            return tells_content(hazard_text(sentence)) && !is_only_of_contact(sentence, told.allergen, knowledge) &&
                   std::find(here.begin(), here.end(), told) != here.end();
        });
        if (!surely) told.words = "may contain " + told.words;
        all.push_back(std::move(told));
    }
    return all;
}

std::vector<Declared> foods_with_allergens(std::string_view sentence, const Knowledge& knowledge) {
    const auto words = words_of(sentence);
    std::vector<Declared> all;
    for (std::size_t first = 0; first < words.size();) {
        std::size_t next = first + 1;
        for (std::size_t last = std::min(words.size(), first + longest_food); last > first; --last) {
            const std::string name = phrase(words, first, last);
            const auto* food = knowledge.ingredient_named(name);
            if (!food) continue;
            std::vector<NamedAllergen> held;
            add_foods(held, std::string(sentence.substr(words[first].begin, words[last - 1].end - words[first].begin)), false, knowledge);
            const HazardText text = hazard_text(sentence);
            const std::size_t before = hazard_text(sentence.substr(0, words[first].begin)).words.size();
            if (!is_denied(text, before, before + hazard_text(name).words.size(), knowledge.records().lexicon))
                for (const auto& one : held)
                    if (!only_sounds_so(text, before, one.allergen, knowledge.records().lexicon))
                        all.push_back({one.allergen, hazard_fold(name)});
            next = last;
            break;
        }
        first = next;
    }
    return all;
}

std::vector<Declared> told_by_remark(std::string_view said, const std::vector<const Ingredient*>& own, const Knowledge& knowledge) {
    std::vector<std::string> held, near;
    for (const auto& one : allergens_of_remark(said, knowledge))
        if (!brings(own, one.allergen, knowledge)) (one.contained ? held : near).push_back(one.allergen);
    if (held.empty() && near.empty()) return {};
    std::string words(bare(said));
    for (auto at = words.find_first_of(",;:()[]\""); at != std::string::npos; at = words.find_first_of(",;:()[]\"", at + 1))
        words.replace(at, 1, words[at] == ',' || words[at] == ';' ? " and" : " ");
    words = (held.empty() ? "" : "contains " + named_in_words(held) + (near.empty() ? "" : " and ")) +
            (near.empty() ? "" : "may contain " + named_in_words(near)) + ": " + words;
    std::vector<Declared> all;
    for (const auto* some : {&held, &near})
        for (const auto& one : *some) all.push_back({one, words});
    return all;
}

}  // namespace standin
