#include "formula/words/limes.hpp"

#include <algorithm>
#include <array>

#include "core/names.hpp"
#include "formula/lexer/line_words.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

constexpr std::size_t longest_kind = 2;  // words

// "limones" too, and no "limone".
bool is_limon(const Word& word) { return word.folded == "limon" || (word.folded == "limone" && word.raw.ends_with("s")); }

// Behind it: which one it is.
bool tells_which(const Word& word) {
    constexpr std::array<std::string_view, 10> which{"verde",    "verdes", "amarillo", "amarillos", "criollo",
                                                     "criollos", "real",   "eureka",   "persa",     "persas"};
    return std::find(which.begin(), which.end(), std::string_view(word.folded)) != which.end();
}

bool is_open(const std::vector<Word>& words, std::size_t i) {
    return is_limon(words[i]) && (i + 1 == words.size() || !tells_which(words[i + 1]));
}

}  // namespace

std::optional<bool> limes_in(std::string_view text, const Knowledge& knowledge) {
    if (!says_limon(text)) return std::nullopt;
    const auto words = words_of(text);
    bool lime = false, lemon = false;
    for (std::size_t first = 0; first < words.size(); ++first)
        for (std::size_t last = first + 1; last <= std::min(words.size(), first + longest_kind); ++last) {
            const std::string said = fold(phrase(words, first, last));
            lime = lime || knowledge.in_list(WordList::kitchen_of_limes, said);
            lemon = lemon || knowledge.in_list(WordList::kitchen_of_lemons, said);
        }
    if (lime == lemon) return std::nullopt;
    return lime;
}

std::string with_fruit(std::string_view line, bool lime) {
    std::string out(line);
    const auto words = words_of(line);
    for (std::size_t i = words.size(); i-- > 0;)
        if (is_open(words, i)) out.replace(words[i].begin, words[i].end - words[i].begin, lime ? "lima" : "limón");
    return out;
}

bool says_limon(std::string_view line) {
    if (line.find("lim") == std::string_view::npos && line.find("Lim") == std::string_view::npos) return false;
    const auto words = words_of(line);
    for (std::size_t i = 0; i < words.size(); ++i)
        if (is_open(words, i)) return true;
    return false;
}

Reason limon_note(bool lime) { return reason_about(ReasonKind::meant_as, "limón", {lime ? "lime" : "lemon"}); }

}  // namespace standin
