// A line cut into words, and the closed list of words that say nothing about weight or kind.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace standin {

struct Word {
    std::string raw, folded;
    std::size_t begin = 0, end = 0;  ///< in the line
    std::size_t segment = 0;         ///< one more after each comma, semicolon, colon or dash between blanks
};

std::vector<Word> words_of(std::string_view line);

/// The words [first, last) as written, with a blank between.
std::string phrase(const std::vector<Word>& words, std::size_t first, std::size_t last);

/// How many words from `first` on make a phrase that can be passed over: "fresh", "finely", "skin on". Zero when it is no such.
std::size_t passable(const std::vector<Word>& words, std::size_t first);

/// Likewise for words that tell how finely something is cut, which changes no weight: "chopped", "ground", "grated".
std::size_t cut_word(const std::vector<Word>& words, std::size_t first);

/// Whether the word at `i` opens a clause that tells something in passing: "from about 3 oranges", "such as oak", "for depth".
bool opens_aside(const std::vector<Word>& words, std::size_t i);

/// A word that tells of another weight, fat or salt than the bare name does: "salted", "bone", "drained". Never passed over.
bool changes_food(std::string_view folded);

/// "gluten free" among the words [first, last): another food, and another allergen, than the bare name.
bool tells_of_absence(const std::vector<Word>& words, std::size_t first, std::size_t last);

/// Of these the words that tell another food from the first word on: "(smoked, for depth)".
bool names_a_kind(std::string_view folded);

/// The clause that says a food stays outside the mass, as written: "for frying", "for the poaching water". Empty when there is none.
std::string outside_purpose(std::string_view line);

/// The lean share in per cent that "85% lean", "15 % fat" or "85/15" tells, and the words that tell it.
struct LeanShare {
    double lean = 0;
    std::size_t first = 0, last = 0;
};
std::optional<LeanShare> lean_share(const std::vector<Word>& words, std::size_t first);

/// The phrase in `line` that stands where an amount should: "to taste", "a little", "some". Empty when there is none.
std::string_view vague_amount(std::string_view line);

}  // namespace standin
