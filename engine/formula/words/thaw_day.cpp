#include "formula/words/thaw_day.hpp"

#include <algorithm>

#include "core/names.hpp"
#include "formula/lexer/line_words.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

constexpr std::size_t longest_day = 5;  // words

// How many words from `first` on tell the day, within their clause.
std::size_t day_at(const std::vector<Word>& words, std::size_t first, const Knowledge& knowledge) {
    for (std::size_t last = std::min(words.size(), first + longest_day); last > first; --last)
        if (words[last - 1].segment == words[first].segment && knowledge.in_list(WordList::thawed_when, fold(phrase(words, first, last))))
            return last - first;
    return 0;
}

}  // namespace

void take_thaw_day(std::string& line, const Knowledge& knowledge) {
    const auto words = words_of(line);
    const auto is_thawed = [&](const Word& word) { return knowledge.in_list(WordList::was_frozen, word.folded); };
    const auto blank = [&](std::size_t first, std::size_t last) {
        std::fill(line.begin() + static_cast<std::ptrdiff_t>(words[first].begin),
                  line.begin() + static_cast<std::ptrdiff_t>(words[last - 1].end), ' ');
    };
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (!is_thawed(words[i])) continue;
        for (std::size_t at = i + 1; at < words.size() && words[at].segment == words[i].segment;) {
            const std::size_t said = day_at(words, at, knowledge);
            if (said == 0) break;
            blank(at, at + said);
            at += said;
        }
        for (std::size_t first = i; first-- > 0 && words[first].segment == words[i].segment;) {  // "gestern aufgetaut"
            const std::size_t said = day_at(words, first, knowledge);
            if (said > 0 && first + said == i) blank(first, i);
        }
    }
}

}  // namespace standin
