// A share with the maker's own figure, said of the meat and of the batch: "13.2 g per kg of meat".
#pragma once

#include <string>
#include <vector>

#include "formula/lexer/quantity_text.hpp"

namespace standin {

/// First of the meat, then of the batch. `grams`: what the amount of the line weighs.
std::vector<std::string> shares_of_own(const AmountText& amount, double grams);

}  // namespace standin
