#include "formula/lexer/listed_word.hpp"

#include "core/names.hpp"

namespace standin {

bool eat_listed(Cursor& cursor, WordList list, const Knowledge& knowledge) {
    Cursor ahead = cursor;
    ahead.space();
    const auto word = ahead.word();
    if (word.empty() || !knowledge.in_list(list, fold(word))) return false;
    cursor.go(ahead.at() + word.size());
    return true;
}

}  // namespace standin
