// Lines in other tongues, word for word in English: "2 gousses d'ail" as "2 clove of garlic".
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "knowledge/knowledge.hpp"

namespace standin {

/// In the tongue that knows most of its words; none where no tongue knows one that tells something.
std::optional<std::string> in_english(std::string_view line, const Knowledge& knowledge);

}  // namespace standin
