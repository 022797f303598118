// Money in words.
#pragma once

#include <string>

#include "standin/cost.hpp"
#include "standin/reason.hpp"

namespace standin::cli {

/// "6.50 EUR", "$6.50", "6.50" where no currency was said; to the cent.
std::string money(double amount, const std::string& currency);
/// With the range behind it where it has one: "6.50 EUR (6.10-7.20)".
std::string money(const Band& band, const std::string& currency);

/// A kilo or a pound, raw and cooked, a link or a patty, and what has no price.
std::string cost_sentence(const Cost& cost, Units units);
/// "Costs 0.35 EUR more a kilo." or "Saves 0.35 EUR a kilo."; where something has no price: "No price for chard: the rest saves 0.35 EUR a
/// kilo."
std::string cost_sentence(const CostChange& change, Units units);

}  // namespace standin::cli
