// How old somebody is who eats it, where a text tells the age of a small child or of the old.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "knowledge/index/knowledge.hpp"

namespace standin {

/// From 65 on food safety pages count the old (from-memory).
inline constexpr int old_years = 65, oldest_years = 110;

/// The words of a text that tell such an age of somebody: "aged two", "my nan is 88", "for my 3 year old", "14 Monate alt"; empty where
/// they tell none, or that of a thing ("3 year old cheddar", "our 20 year tradition"). `words` as those of a hazard text.
std::string frail_age_at(const std::vector<std::string>& words, std::size_t at, const Knowledge& knowledge);

/// What a number alone tells, in digits or in one word ("84", "three", "achtzig"): that it is one, and that so many years or months are an
/// age of the small or the old.
struct FrailNumber {
    bool read = false, years = false, months = false;
};
FrailNumber frail_number(std::string_view word, const Knowledge& knowledge);

}  // namespace standin
