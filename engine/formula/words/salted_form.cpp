#include "formula/words/salted_form.hpp"

#include <algorithm>

#include "formula/lexer/line_words.hpp"

namespace standin {
namespace {

constexpr std::size_t longest_name = 3;  // words

struct Named {
    std::size_t first = 0, last = 0;  // words
    std::string salted;
};

// The name that has a salted form; `last` is nought where there is none.
Named plain_name(const std::vector<Word>& words, const Knowledge& knowledge) {
    for (std::size_t first = 0; first < words.size(); ++first)
        for (std::size_t last = std::min(words.size(), first + longest_name); last > first; --last) {
            const auto* plain = knowledge.ingredient_named(phrase(words, first, last));
            const auto* salted = plain ? knowledge.ingredient_named("salted " + plain->names.front()) : nullptr;
            if (salted && salted != plain) return {first, last, salted->names.front()};
        }
    return {};
}

}  // namespace

std::string with_salted_form(std::string_view line, const Knowledge& knowledge) {
    const auto words = words_of(line);
    const auto said = std::find_if(words.begin(), words.end(), [](const Word& word) { return word.folded == "salted"; });
    if (said == words.end()) return {};
    const Named named = plain_name(words, knowledge);
    if (named.last == 0) return {};
    std::size_t begin = said->begin;
    const auto at = static_cast<std::size_t>(said - words.begin());
    if (at > named.last && words[at - 1].folded == "and") begin = words[at - 1].begin;
    const auto sign = line.find_last_not_of(' ', begin == 0 ? 0 : begin - 1);
    if (at >= named.last && sign != std::string_view::npos && line[sign] == '&') begin = sign;
    std::string out(line);
    const auto drop_said = [&] { out.replace(begin, said->end - begin, said->end - begin, ' '); };
    const auto name_it = [&] { out.replace(words[named.first].begin, words[named.last - 1].end - words[named.first].begin, named.salted); };
    if (at >= named.last) drop_said(), name_it();  // from behind, so that the places before it stay
    else name_it(), drop_said();
    return out;
}

}  // namespace standin
