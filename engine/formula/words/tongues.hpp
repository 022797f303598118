// Lines in other tongues, word for word in English: "2 gousses d'ail" as "2 clove of garlic".
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "knowledge/index/knowledge.hpp"

namespace standin {

struct Rewording {
    std::string text;
    bool foreign = true;               ///< from another tongue; else other words for the same in English
    bool adjective_behind = false;     ///< from a tongue in which an adjective stands behind its noun
    bool nouns_have_capitals = false;  ///< from German, where a capital makes no name
};

/// In each tongue that knows a word of it that tells something; first the one that knows most.
std::vector<Rewording> in_english(std::string_view line, const Knowledge& knowledge);

}  // namespace standin
