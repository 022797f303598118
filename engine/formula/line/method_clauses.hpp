// The parts of a sentence of a method, each of which does one thing: "blend the spinach with ice, then fold in the chopped dill".
#pragma once

#include <string>
#include <vector>

#include "formula/lexer/line_words.hpp"
#include "knowledge/index/knowledge.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {

struct MethodClause {
    std::string text;
    std::vector<Word> words;  ///< of `text`
};

/// Parted at its stops, and before the words of `starts`.
std::vector<MethodClause> method_clauses(const std::string& sentence, WordList starts, const Knowledge& knowledge);

}  // namespace standin
