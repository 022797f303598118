// What a batch brings that people may be allergic to, and how each code wants it said. What other food went through the same grinder is
// never worked out: the general caution "may-contain" says so on every page.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "knowledge/knowledge.hpp"
#include "standin/prediction.hpp"

namespace standin {

inline constexpr std::string_view sulphite_class = "sulphite";
inline constexpr double sulphite_limit_mg_kg = 10;

/// Sulphites of the batch in mg SO2 per kg: the upper end of what each ingredient may hold, as weighed, before any loss.
double sulphites_mg_kg(const Prediction& prediction, const Knowledge& knowledge);

/// Whether so much sulphite must be declared under a code: over 10 mg/kg in the EU and the UK, 10 mg/kg or more elsewhere.
bool declares_sulphite(std::string_view code, double mg_kg);

/// Over all rule sets, in the order in which they list their classes; classes no code lists come last.
std::vector<AllergenText> allergens_of(const Prediction& prediction, const Knowledge& knowledge);

/// The classes `variant` has and `base` has not.
std::vector<std::string> new_allergens(const Prediction& base, const Prediction& variant);

}  // namespace standin
