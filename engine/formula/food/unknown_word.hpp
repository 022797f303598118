// The one rule for a word that nobody knows beside a food that is known with certainty: it is the name of a sort, a maker, a place or a
// grade, and no more, unless it stands where it could tell of the food's state, of what is in it, or of another food.
#pragma once

#include <string_view>
#include <vector>

#include "formula/lexer/line_words.hpp"
#include "knowledge/index/knowledge.hpp"

namespace standin {

/// Where a word stands to the name of the food.
enum class Stands {
    before,  ///< "sivri pepper"
    behind,  ///< "spinach Matador": with no sign between
    apart    ///< in a clause of its own: behind a comma, in brackets
};

struct BesideFood {
    const Ingredient& food;
    bool nouns_have_capitals = false;  ///< German: a capital makes no name
    bool adjective_behind = false;     ///< a tongue in which an adjective stands behind its noun: no other food is named there
    bool certain = true;               ///< the food was named by its own name, and not by a word for several
};

/// Whether word `i` of `words`, where [first, last) are the words of the same side or clause, is such a mere name.
bool is_mere_name(const std::vector<Word>& words, std::size_t i, std::size_t first, std::size_t last, Stands stands,
                  const BesideFood& beside, const Knowledge& knowledge);

/// Whether a clause holds a verb or a pronoun, so that what is unknown in it may be said of the food's state.
bool is_sentence(const std::vector<Word>& words, const Knowledge& knowledge);

/// Whether a word tells, or may tell, of the state of a food in any tongue of the lexicon.
bool may_tell_of_state(std::string_view word, const Knowledge& knowledge);

}  // namespace standin
