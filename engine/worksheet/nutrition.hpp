// A nutrition table, per 100 g raw and cooked.
//
//   raw     each amount of the batch over its mass
//   cooked  the same over what the cook leaves; fat and water run out by the cooking model, protein, carbohydrate, fibre and salt stay
//   energy  sum of factor * amount, the factors those of the rule set
//   saturates  a share of the fat by species (SR28); of fat that is no meat's a wide band
//
// Of cooked alcohol a part stays. What little acid adds is left out. Good for a draft; an analysis or the law's own tables decide.
#pragma once

#include <vector>

#include "evaluate/evaluator.hpp"
#include "standin/label.hpp"
#include "worksheet/label_rules.hpp"

namespace standin {

/// Bands from the draws that the predictions use.
std::vector<NutritionRow> nutrition_of(const Formula& formula, const NutritionRule& rule, const Evaluator& evaluator);

/// As the rule set writes it: "12 g", "less than 1 g", "0 g"; without a rule for the row one decimal, of energy and sodium none.
std::string rounded_as(double value, const std::string& row, const std::string& unit, const NutritionRule& rule);

}  // namespace standin
