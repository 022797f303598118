// What a batch brings that people may be allergic to, and how each code wants it said. What other food went through the same grinder is
// never worked out: a caution on every page says so.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "knowledge/index/knowledge.hpp"
#include "standin/formula.hpp"
#include "standin/prediction.hpp"

namespace standin {

inline constexpr std::string_view sulphite_class = "sulphite";

/// Sulphites of the batch in mg SO2 per kg: the upper end of what each ingredient may hold, as weighed, before any loss. Wine may hold what
/// the law of `rules` allows, where that is more.
double sulphites_mg_kg(const Prediction& prediction, const Knowledge& knowledge, const RuleSet* rules = nullptr);

/// Whether so much must be declared under a rule.
bool declares(const AllergenRule& rule, double mg_kg);

/// What a food often holds because of what was done to it before it was bought: dried fruit, sulphite.
std::vector<std::string> may_hold_as_bought(const Line& line, const Knowledge& knowledge);

/// Over all rule sets, in the order of the list of allergens; those that only a bought food may hold last, not sure and
/// not worded for any code: the packet decides.
std::vector<AllergenText> allergens_of(const Prediction& prediction, const Knowledge& knowledge);

/// The classes `variant` is sure to have and `base` has not.
std::vector<std::string> new_allergens(const Prediction& base, const Prediction& variant);

}  // namespace standin
