// Lines that an allergy would take for what a bought food only may hold, where nothing harmless is there to stand in for them.
#pragma once

#include <optional>

#include "substitute/stock.hpp"

namespace standin {

/// The formula with those lines marked to be kept, their packets to be read: no line of the maker's own is left at nothing for a doubt.
/// Nothing where there are none.
std::optional<Formula> with_doubtful_lines_kept(const Formula& formula, const Stock& stock, const Context& context);

}  // namespace standin
