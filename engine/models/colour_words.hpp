// What people call a colour, by an open survey: the names that lie near it vote, each by its distance (CIE94).
//
// The names, their source and the words of makers that they come to stand in knowledge/colour_names.json.
#pragma once

#include <string_view>
#include <vector>

#include "models/cielab.hpp"

namespace standin {

struct ColourName {
    std::string_view word;  ///< "green", "pale green", "olive", "khaki", "greyish", "tan", "grey-brown", "brown", "red-brown", "red",
                            ///< "pink", "purple", "grey-violet", "orange", "yellow" or "dark grey"
    double share = 0;       ///< of the survey's names near this colour, 0-1: how many people would say so, as near as the list can tell
};

/// What is said of a colour, most first, shares that add up to 1; empty where the survey has no name near it. For colours that are not of
/// bare meat, raw or set pale, which has its makers' words.
std::vector<ColourName> surveyed_names(const Lab& lab);

/// What most people say.
ColourName surveyed_name(const Lab& lab);

/// Whether a mass that goes by this word is green.
bool called_green(std::string_view word);

}  // namespace standin
