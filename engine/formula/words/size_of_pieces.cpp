#include "formula/words/size_of_pieces.hpp"

#include <algorithm>
#include <cctype>
#include <string_view>

#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

// "into 1-inch cubes", "in thin strips"
std::size_t into_pieces(const std::vector<Word>& words, std::size_t i, std::size_t last, const Knowledge& knowledge) {
    const bool digit = std::isdigit(static_cast<unsigned char>(words[i].raw.front())) != 0;
    if (digit && i + 1 < last && words[i + 1].folded == "mesh") return i + 2;  // of a sieve: "black pepper, 16 mesh"
    const bool led = words[i].folded == "into" || words[i].folded == "in";
    const bool clause = digit && i > 0 && words[i].segment != words[i - 1].segment;  // ", 5mm cubes", ", 1/4-in dice"
    if (!led && !clause) return i;
    std::size_t end = i;
    for (std::size_t at = led ? i + 1 : i; at < last && words[at].segment == words[i].segment; ++at) {
        const auto& word = words[at].folded;
        if (knowledge.in_list(WordList::piece_shape, word)) end = at + 1;
        else if (!knowledge.in_list(WordList::piece_size, word) && !std::isdigit(static_cast<unsigned char>(word.front()))) break;
    }
    return end;
}

// ", cubed 5 mm", "through a 4.5mm plate": how fine it is cut.
std::size_t size_of_cut(const std::vector<Word>& words, std::size_t i, std::size_t last, const Knowledge& knowledge) {
    const auto is_length = [](std::string_view word) { return word == "mm" || word == "cm" || word == "inch" || word == "in"; };
    std::size_t at = i;
    if (words[at].folded == "through" || words[at].folded == "about") ++at;
    if (at < last && (words[at].folded == "a" || words[at].folded == "the")) ++at;
    if (at >= last || std::isdigit(static_cast<unsigned char>(words[at].raw.front())) == 0) return i;
    const auto letter = words[at].folded.find_first_not_of("0123456789.,/- ");
    const bool joined = letter != std::string::npos && is_length(words[at].folded.substr(letter));
    if (!joined && (letter != std::string::npos || at + 1 >= last || !is_length(words[at + 1].folded))) return i;
    std::size_t end = at + (joined ? 1 : 2);
    while (end < last && words[end].segment == words[at].segment &&
           (knowledge.in_list(WordList::piece_shape, words[end].folded) || knowledge.in_list(WordList::plate_word, words[end].folded)))
        ++end;
    return end;
}

}  // namespace

std::size_t size_of_pieces(const std::vector<Word>& words, std::size_t i, std::size_t last, const Knowledge& knowledge) {
    return std::max(into_pieces(words, i, last, knowledge), size_of_cut(words, i, last, knowledge));
}

}  // namespace standin
