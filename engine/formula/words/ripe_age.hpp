// The age of what ripens is ordinary: a two-year-old cheddar, "stagionato 36 mesi", a red wine of 2019.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "knowledge/index/knowledge.hpp"

namespace standin {

struct RipeAge {
    std::string line;      ///< with blanks where the age stood, so that every place stays
    std::string said;      ///< the age as written
    bool counted = false;  ///< in months or years; else a year ("2019") or a bare word ("stagionato")
    bool a_year = false;
};

/// The line without the age that it tells; nothing where it tells none.
std::optional<RipeAge> take_ripe_age(std::string_view line, const Knowledge& knowledge);

/// Whether such an age says nothing of the food's state.
bool may_have_age(const Ingredient& food, const RipeAge& age, const Knowledge& knowledge);

/// The line without it where every one of its `foods` may have it, else as it is.
std::string without_ripe_age(std::string_view line, const std::vector<const Ingredient*>& foods, const Knowledge& knowledge);

}  // namespace standin
