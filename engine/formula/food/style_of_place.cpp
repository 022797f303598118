#include "formula/food/style_of_place.hpp"

#include <cctype>

#include "core/names.hpp"
#include "formula/hazards/hazards.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/words/line_asides.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

// In another tongue too: "ham-style" and "vegan-style" are no ham and no style.
bool is_of_a_place(const std::string& word, const Knowledge& knowledge) {
    return foods_named(word, 1, knowledge).empty() && allergens_named(word, knowledge).empty() && !danger_in(word, knowledge) &&
           !changes_food(fold(word), knowledge) && !names_a_kind(fold(word), knowledge) && !knowledge.preparation_named(word);
}

}  // namespace

void take_style(std::string& line, const Knowledge& knowledge) {
    const auto words = words_of(line);
    for (std::size_t i = words.size(); i-- > 1;) {
        const Word &of = words[i - 1], &style = words[i];
        if (!knowledge.in_list(WordList::style_word, style.folded) || of.segment != style.segment) continue;
        const bool joined = style.begin == of.end + 1 && line[of.end] == '-';
        const bool a_name = std::isupper(static_cast<unsigned char>(of.raw.front())) != 0;
        if ((joined || a_name) && is_of_a_place(of.raw, knowledge)) line.erase(of.end, style.end - of.end);
    }
}

}  // namespace standin
