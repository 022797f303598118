// What a text says is, or may be, in a food: the words of packets, in any tongue.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "formula/amounts/shares.hpp"
#include "knowledge/index/knowledge.hpp"
#include "knowledge/words/hazard_text.hpp"
#include "standin/result.hpp"

namespace standin {

/// Whether `text` says that what it names at `match` is in it: "contains", "traces of" before it, "enthalten", "içerebilir" at the
/// end. Beside a food "with" is enough.
bool says_it_holds(const HazardText& text, const HazardMatch& match, const Lexicon& lexicon, bool beside_food);

/// The question of a text which says that something is in the food and names nothing that is known, or which is written in letters that
/// nothing here reads: either may be an allergen. The error has no place yet.
std::optional<Error> content_not_known(std::string_view text, const Knowledge& knowledge);

/// Likewise of a text beside the lines, where a method may be in any tongue: only what a packet says.
std::optional<Error> content_not_known_beside(std::string_view text, const Knowledge& knowledge);

/// What a line says it holds is counted, and not passed over.
void tell_of_declared(ReadLine& read, const Knowledge& knowledge);

/// The clauses of a text in letters that are not Latin, as written: the reader of lines sees no words in them.
std::vector<std::string> clauses_beyond_latin(std::string_view text);

}  // namespace standin
