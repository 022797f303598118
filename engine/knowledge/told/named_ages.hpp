// People named with their age beside them: "Grandad (84) and Mia (14 months)".
#pragma once

#include <string>
#include <string_view>

#include "knowledge/index/knowledge.hpp"

namespace standin {

/// The words that tell the age of a named small child or of the named old: "Ida (3)", "Papi, 84 ans", "Ida, 2 years old"; empty where they
/// tell none, or that of a food or a thing ("Comté (24 mois)"). The text as it was written, with its capitals and its signs.
std::string named_age_in(std::string_view text, const Knowledge& knowledge);

}  // namespace standin
