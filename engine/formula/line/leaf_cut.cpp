#include "formula/line/leaf_cut.hpp"

#include <algorithm>
#include <iterator>
#include <utility>

#include "core/contains.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/lexer/sentences.hpp"
#include "formula/line/method_clauses.hpp"
#include "formula/line/method_facts.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

bool clause_says(const std::vector<Word>& words, WordList list, const Knowledge& knowledge) {
    return std::any_of(words.begin(), words.end(), [&](const Word& word) { return knowledge.in_list(list, word.folded); });
}

// "..., parsley and cilantro to a paste": what opens with a food goes on with what stood before.
bool goes_on(const std::string& clause, const Knowledge& knowledge) {
    constexpr std::size_t longest_name = 3;  // words
    const auto words = words_of(clause);
    for (std::size_t last = 1; last <= std::min(words.size(), longest_name); ++last) {
        const std::string name = phrase(words, 0, last);
        if (knowledge.ingredient_named(name) || knowledge.ingredient_meant(name)) return true;
    }
    return false;
}

bool names_meat(const std::vector<Word>& words, const Knowledge& knowledge) {
    if (clause_says(words, WordList::whole_mass_word, knowledge)) return true;
    return std::any_of(words.begin(), words.end(), [&](const Word& word) {
        const auto* food = knowledge.ingredient_named(word.folded);
        if (!food) food = knowledge.ingredient_meant(word.folded);
        return food && food->meat;
    });
}

// Empty: the clause cuts nothing.
std::string_view cut_in(const std::vector<Word>& words, const Knowledge& knowledge) {
    if (clause_says(words, WordList::not_done_word, knowledge)) return {};
    const bool meat = names_meat(words, knowledge);
    if (clause_says(words, WordList::paste_word, knowledge)) return "pureed";
    if (clause_says(words, WordList::blending_word, knowledge) && !meat) return "pureed";  // "blend the meat and herbs" is to mix them
    if (clause_says(words, WordList::grinding_word, knowledge)) return "minced";
    if (!clause_says(words, WordList::chopping_word, knowledge)) return {};
    return clause_says(words, WordList::finely_word, knowledge) ? "minced" : "chopped";
}

}  // namespace

std::vector<CutInMethod> leaf_cuts_in_method(const std::vector<std::string>& method, const Knowledge& knowledge) {
    std::vector<CutInMethod> all;
    for (const auto& text : method)
        for (const auto& sentence : sentences_of(text)) {
            std::vector<CutInMethod> here;
            for (auto& [clause, words] : method_clauses(sentence, WordList::clause_start, knowledge)) {
                const auto cut = cut_in(words, knowledge);
                const bool on = !here.empty() && goes_on(clause, knowledge);
                if (on && (cut.empty() || cut == "pureed")) {
                    here.back().clause += " " + clause;
                    if (!cut.empty()) here.back().preparation = cut;  // "chop the dill, parsley and mint to a paste"
                } else if (!cut.empty()) {
                    here.push_back({std::move(clause), cut});
                }
            }
            all.insert(all.end(), std::make_move_iterator(here.begin()), std::make_move_iterator(here.end()));
        }
    return all;
}

std::vector<HeatedInMethod> heated_in_method(const std::vector<std::string>& method, WordList heats, const Knowledge& knowledge) {
    std::vector<HeatedInMethod> all;
    std::size_t last_sentence = 0;  // where the parts of the sentence before begin
    for (const auto& text : method)
        for (const auto& sentence : sentences_of(text)) {
            const bool peels = clause_says(words_of(sentence), WordList::peeling_word, knowledge);
            for (std::size_t i = last_sentence; i < all.size(); ++i) all[i].peels = all[i].peels || peels;
            last_sentence = all.size();
            bool heated = false;
            for (auto& [clause, words] : method_clauses(sentence, WordList::clause_start, knowledge)) {
                const bool here = clause_says(words, heats, knowledge) && !clause_says(words, WordList::not_done_word, knowledge) &&
                                  !names_meat(words, knowledge) && !clause_says(words, WordList::mass_word, knowledge);
                heated = here || (heated && goes_on(clause, knowledge));  // "toast the cumin, fennel and walnuts"
                if (heated) all.push_back({std::move(clause), peels});
            }
        }
    return all;
}

bool clause_cuts(const CutInMethod& cut, const Ingredient& leaf, const Knowledge& knowledge) {
    const auto words = words_of(cut.clause);
    const auto greens = [&](const Word& word) {  // greens, not green chiles
        return knowledge.in_list(WordList::greens_word, word.folded) && (word.folded != "green" || word.raw.ends_with('s'));
    };
    if (std::any_of(words.begin(), words.end(), greens)) return true;
    if (clause_says(words, WordList::herbs_word, knowledge) && contains(leaf.roles, Role::herb)) return true;
    return sentence_names(cut.clause, leaf, knowledge);
}

}  // namespace standin
