// A share with the maker's own figure, said of the meat and of the batch: "13.2 g per kg of meat".
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "formula/amounts/fact_text.hpp"
#include "formula/lexer/quantity_text.hpp"
#include "knowledge/records/records.hpp"

namespace standin {

/// Begins what is asked of a share where nothing tells of what it is one.
inline constexpr std::string_view share_of_what = "a share of what";

/// First of the meat, then of the batch. `grams`: what the amount of the line weighs.
std::vector<std::string> shares_of_own(const AmountText& amount, double grams);

/// "Vinegar 5 %", "beer 5 %" and "cream 30 %" may tell of the food, where nothing else does; no vinegar has 1 % of acid, no wine 2 % of
/// alcohol.
bool figure_may_describe(const Ingredient& ingredient, double figure, const std::vector<FactText>& facts);

}  // namespace standin
