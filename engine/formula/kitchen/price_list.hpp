// A list of prices, a line a food: "pork shoulder 6.50/kg", "parsley 1.20 a bunch", "$3.99/lb bacon", "500 g salt 0.60", "spinach free".
// Any word or sign of currency will do, one a list; "currency: EUR" names it once.
#pragma once

#include <string_view>

#include "knowledge/index/knowledge.hpp"
#include "standin/cost.hpp"
#include "standin/result.hpp"

namespace standin {

/// All faults at once, each with its place.
Result<PriceList> read_prices(std::string_view text, std::string_view file, const Knowledge& knowledge);

/// Whether the lines tell prices, most of them; the foods need not be known.
bool looks_like_prices(std::string_view text, std::string_view file);

}  // namespace standin
