// The price list that a call means.
#pragma once

#include <optional>
#include <string>

#include "command.hpp"
#include "render/extras.hpp"
#include "standin/engine.hpp"

namespace standin::cli {

/// The file of --prices, or prices.txt beside the formula where there is one.
std::optional<std::string> prices_file(const Call& call);

/// What that file says; nothing without one.
using Prices = std::optional<PriceList>;
Result<Prices> price_list(const Call& call, const Engine& engine);

/// What goes beside the answer about `formula`: its cost by `prices`, which must outlive the result, and where `paper` says so the label
/// and the cold store. `makes`: of a bench sheet, how large a piece is.
Result<Extras> extras_of(const Engine& engine, const Formula& formula, const Prices& prices, bool paper,
                         const std::optional<SheetYield>& makes = {});

}  // namespace standin::cli
