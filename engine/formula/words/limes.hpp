// "Limón" is the lemon in Spain and the lime in Mexico: the words around it tell which.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "knowledge/index/knowledge.hpp"
#include "standin/reason.hpp"

namespace standin {

/// What "limón" is in a text: true the lime, false the lemon; nothing where its words do not tell, or tell both.
std::optional<bool> limes_in(std::string_view text, const Knowledge& knowledge);

/// The line with "lima" for "limones" where those are limes, else with "limón"; unchanged where the line tells which they are.
std::string with_fruit(std::string_view line, bool lime);

/// Whether the line has the word and does not tell which it is.
bool says_limon(std::string_view line);

/// What it was taken for.
Reason limon_note(bool lime);

}  // namespace standin
