// What a formula costs by a price list: every line as it must be bought, what is cut away paid for too.
#pragma once

#include "knowledge/index/knowledge.hpp"
#include "standin/cost.hpp"
#include "standin/formula.hpp"
#include "standin/sheet.hpp"

namespace standin {

/// `makes` says how large a link or patty is; the cooked kilo goes by the cook loss of `prediction`.
Cost cost_of(const Formula& formula, const Prediction& prediction, const SheetYield& makes, const PriceList& prices,
             const Knowledge& knowledge);

/// A kilo of `variant` less a kilo of `base`, raw. What is priced alike in both costs alike, so the band is that of the difference.
CostChange cost_change(const Formula& base, const Formula& variant, const PriceList& prices, const Knowledge& knowledge);

}  // namespace standin
