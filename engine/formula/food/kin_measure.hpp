// What a bunch, a head or a cup weighs by that of the food's kin, where nobody wrote down its own.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "formula/amounts/amount.hpp"
#include "formula/food/line_prepared.hpp"
#include "knowledge/index/knowledge.hpp"

namespace standin {

/// How far apart the kin may weigh: in a formula it is asked where they do not agree, of a list any is better than none.
enum class KinAgree { well, anyhow };

/// The middle of what the same amount of each food of its family, tissue and main role weighs, as far apart as they are. Nothing where
/// no unit is said or too few are known.
std::optional<Band> weight_by_kin(const AmountText& amount, const Ingredient& ingredient, const std::vector<std::string>& words,
                                  KinAgree agree, const Knowledge& knowledge);

/// Likewise of a volume of what shrank or swelled before it was measured, "1 cup roasted green chiles", "1 tsp dried lovage": by the
/// foods of its kind that are bought so.
std::optional<Band> weight_when_prepared(const MeasuredFood& food, const std::vector<std::string>& words);

/// Says so, unsure.
Reason by_kin(const Ingredient& ingredient, const AmountText& amount, const Band& grams);

}  // namespace standin
