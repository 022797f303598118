// The next word of a line, where a list of the lexicon holds it.
#pragma once

#include "formula/lexer/cursor.hpp"
#include "knowledge/index/knowledge.hpp"

namespace standin {

/// Passes blanks and the next word when the list holds it, else nothing.
bool eat_listed(Cursor& cursor, WordList list, const Knowledge& knowledge);

}  // namespace standin
