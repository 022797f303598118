// Finding the words of hazards in any text.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "knowledge/records/lexicon.hpp"

namespace standin {

/// A text cut into words for looking up hazards: lower case, accents off, every script kept, signs as blanks.
struct HazardText {
    std::vector<std::string> words;
    std::vector<std::size_t> clauses{};  ///< of each word, counted by the signs that end one; empty: all are of one

    std::size_t clause_of(std::size_t word) const { return word < clauses.size() ? clauses[word] : 0; }

    /// Another text behind this one.
    void append(const HazardText& other);
};
HazardText hazard_text(std::string_view text);

/// The words with a blank between: what a pattern of the lexicon must look like.
std::string hazard_fold(std::string_view text);

/// How many words from `first` on the pattern takes; zero when it does not stand there.
std::size_t fits_at(std::string_view pattern, const std::vector<std::string>& words, std::size_t first);

/// Whether one of the patterns, of one word each, fits a word of a hazard text.
bool fits_any(const std::vector<std::string>& patterns, std::string_view word);

/// Whether words [first, last) are denied where they stand: "no", "without any", "-free".
bool is_denied(const HazardText& text, std::size_t first, std::size_t last, const Lexicon& lexicon);

/// Whether they are said not to be left out: "not lupin-free", "not free from nuts".
bool is_said_not_free(const HazardText& text, std::size_t first, std::size_t last, const Lexicon& lexicon);

/// Whether what stands before a word denies it: "no", "without any".
bool ends_in_denial(std::string_view before, const Lexicon& lexicon);

/// Whether the word at `place` only sounds like what holds the allergen: "size of a walnut", "in the egg compartment".
bool only_sounds_so(const HazardText& text, std::size_t place, std::string_view allergen, const Lexicon& lexicon);

struct HazardMatch {
    const Hazard* hazard = nullptr;
    std::size_t first = 0, last = 0;  ///< words
    std::string said;                 ///< those words
};

/// Every hazard whose words stand in `text` and are not denied there; those that need an ingredient (`of`) too.
std::vector<HazardMatch> hazards_in(const HazardText& text, const Lexicon& lexicon);

}  // namespace standin
