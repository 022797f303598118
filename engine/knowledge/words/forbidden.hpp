// Sentences that forbid what they name: "Never thaw it on the counter."
#pragma once

#include <cstddef>

#include "knowledge/records/lexicon.hpp"
#include "knowledge/words/hazard_text.hpp"

namespace standin {

/// Whether the clause around words [first, last) forbids what they say: a word that forbids before them, what is forbidden in the same
/// clause, and nothing between that turns it round ("do not cool it before you leave it on the counter").
bool is_forbidden(const HazardText& text, std::size_t first, std::size_t last, const Prohibitions& prohibitions);

/// Whether the clause before the word `first` denies only that it is left undone: "n'oubliez pas de", "do not forget to".
bool is_urged(const HazardText& text, std::size_t first, const Prohibitions& prohibitions);

}  // namespace standin
