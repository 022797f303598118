#include "formula/food/free_of.hpp"

#include <algorithm>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "formula/food/name_text.hpp"
#include "formula/hazards/hazards.hpp"
#include "formula/lexer/line_words.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/records/word_list.hpp"
#include "knowledge/words/hazard_text.hpp"

namespace standin {
namespace {

constexpr std::size_t longest = 4;  // words

// "Gluten free breadcrumbs" are a food of their own.
bool is_in_a_name(const std::vector<Word>& words, std::size_t i, const Knowledge& knowledge) {
    for (std::size_t last = i + 3; last <= std::min(words.size(), i + 2 + longest); ++last)
        if (known_ingredient(phrase(words, i, last), knowledge)) return true;
    return false;
}

bool holds(const Ingredient& food, const std::vector<Declared>& what, const Knowledge& knowledge) {
    return std::any_of(what.begin(), what.end(), [&](const Declared& one) { return is_among(one.allergen, food.allergens, knowledge); });
}

}  // namespace

void take_free_of(std::string& line, const Knowledge& knowledge) {
    const auto words = words_of(line);
    for (std::size_t i = 0; i + 1 < words.size(); ++i) {
        if (words[i + 1].folded != "free" || words[i].segment != words[i + 1].segment) continue;
        const auto what = allergens_named(words[i].raw, knowledge);
        const auto& denials = knowledge.records().lexicon.denials.before;
        if (i > 0 && contains(denials, hazard_fold(words[i - 1].raw))) continue;  // "not nut-free"
        if (what.empty() || is_in_a_name(words, i, knowledge)) continue;
        std::string rest = line;
        rest.erase(words[i].begin, words[i + 1].end - words[i].begin);
        const auto foods = foods_named(rest, longest, knowledge);
        const bool in_one = std::any_of(foods.begin(), foods.end(), [&](const Ingredient* food) { return holds(*food, what, knowledge); });
        if (foods.empty() || in_one) continue;
        line = std::move(rest);
        return;
    }
}

}  // namespace standin
