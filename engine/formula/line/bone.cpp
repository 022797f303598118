#include "formula/line/bone.hpp"

#include <algorithm>
#include <string>

#include "core/names.hpp"
#include "formula/lexer/line_words.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {

std::optional<std::pair<std::size_t, std::size_t>> bone_said(std::string_view line, const Knowledge& knowledge) {
    constexpr std::size_t longest = 5;  // words
    const auto words = words_of(line);
    for (std::size_t first = 0; first < words.size(); ++first)
        for (std::size_t last = std::min(words.size(), first + longest); last > first; --last) {
            if (!knowledge.in_list(WordList::with_bone, fold(phrase(words, first, last)))) continue;
            if (first > 0 && knowledge.in_list(WordList::stock_none, words[first - 1].folded)) continue;
            return std::pair(words[first].begin, words[last - 1].end);
        }
    return std::nullopt;
}

std::optional<Error> weighed_with_bone(std::string_view line, const Origin& origin, const Knowledge& knowledge) {
    const auto said = bone_said(line, knowledge);
    if (!said || knowledge.in_list(WordList::passed_over, fold(line.substr(said->first, said->second - said->first)))) return std::nullopt;
    std::string rest(line);
    std::size_t first = said->first, last = said->second;
    if (first > 0 && rest[first - 1] == '(' && last < rest.size() && rest[last] == ')') --first, ++last;
    rest.replace(first, last - first, " ");
    rest.erase(rest.find_last_not_of(" ,;-") + 1);
    const auto read = read_line(rest, origin, knowledge);
    if (!read || !knowledge.ingredient(read->line.ingredient)->meat) return std::nullopt;
    return Error{Trouble::bad_data,
                 "\"" + std::string(line.substr(said->first, said->second - said->first)) +
                     "\": the bone does not go into the mass: expected what the meat weighs without it",
                 origin.at(said->first),
                 {"boneless"}};
}

}  // namespace standin
