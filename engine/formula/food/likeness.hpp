// A food that is no record, said once to be like one that is: "200 g methi, like dandelion greens".
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "formula/lexer/line_words.hpp"
#include "formula/lexer/trouble.hpp"
#include "knowledge/index/knowledge.hpp"
#include "standin/reason.hpp"

namespace standin {

struct Likeness {
    std::string called;    ///< the maker's name of it
    std::string line;      ///< the same line with the likeness in its place
    bool bracket = false;  ///< a bracket names it, and does not say that it is like it
};

/// Nothing where the line says no such thing, or says it of a food that is known.
std::optional<Likeness> likeness_in(std::string_view line, const Knowledge& knowledge);

/// Why `called` may not go in under the name of `like`: it is too near to a word that is refused, or of a sort where each has dangers of
/// its own. The error has no place yet.
std::optional<Error> refused_likeness(const std::string& called, const Ingredient& like, const Knowledge& knowledge);

/// A word that is refused, one slip of the pen away from a word of `called`; empty where there is none.
std::string near_danger(const std::string& called, const Knowledge& knowledge);

/// Why a line that nobody can read may be a slip of the pen for what is refused: "hemlok", "lilly of the valley". The error has no place
/// yet.
std::optional<Error> nearly_refused(std::string_view line, const Knowledge& knowledge);

/// A sort of which each has dangers of its own: meats, fish, fungi, salts, beans, pure acids.
bool is_each_its_own(const Ingredient& ingredient);

/// What every page says of it.
Reason likeness_note(const Likeness& likeness, const Ingredient& like);

/// The first of `words`, before `last`, that stands behind the amount and what is done to the food.
std::size_t first_of_name(std::string_view line, const std::vector<Word>& words, std::size_t last, const Knowledge& knowledge);

}  // namespace standin
