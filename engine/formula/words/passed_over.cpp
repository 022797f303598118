#include "formula/words/passed_over.hpp"

#include <algorithm>

#include "core/names.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

std::size_t longest_of(const std::vector<Word>& words, std::size_t first, WordList list, const Knowledge& knowledge) {
    std::string joined;
    std::size_t best = 0;
    for (std::size_t count = 1; count <= 6 && first + count <= words.size(); ++count) {
        if (words[first + count - 1].segment != words[first].segment) break;
        if (count > 1) joined += ' ';
        joined += words[first + count - 1].folded;
        if (knowledge.in_list(list, joined)) best = count;
    }
    return best;
}

}  // namespace

std::size_t passable(const std::vector<Word>& words, std::size_t first, const Knowledge& knowledge) {
    return longest_of(words, first, WordList::passed_over, knowledge);
}

std::size_t cut_word(const std::vector<Word>& words, std::size_t first, const Knowledge& knowledge) {
    return longest_of(words, first, WordList::cut, knowledge);
}

std::size_t part_only(const std::vector<Word>& words, std::size_t first, const Knowledge& knowledge) {
    return longest_of(words, first, WordList::part_only, knowledge);
}

std::string vague_amount(std::string_view line, const Knowledge& knowledge) {
    const auto words = words_of(line);
    for (std::size_t first = 0; first < words.size(); ++first)
        for (std::size_t last = std::min(words.size(), first + 3); last > first; --last)
            if (std::string told = fold(phrase(words, first, last)); knowledge.in_list(WordList::vague, told)) return told;
    return {};
}

}  // namespace standin
