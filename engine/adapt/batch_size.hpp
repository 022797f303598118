// How large a batch what is on hand makes, before anything is exchanged.
#pragma once

#include <optional>

#include "standin/advice.hpp"
#include "substitute/stock.hpp"

namespace standin {

/// A formula at the size it can be made, and what to say of it.
struct Sized {
    Formula formula;
    std::optional<Scaled> scaled;  ///< absent: the size it was
};

/// Scaled to the meat asked for (`meat_g`), or with `as_much` to what the weights on the list make of it; then down to the meat that there
/// is. A meat line that is short counts with the other meat of its role that the list names; fat that is very short is left to the search.
/// Weights come out rounded to the scale, meat never up.
Result<Sized> at_size(const Formula& formula, std::optional<double> meat_g, bool as_much, const Stock& stock, const Context& context);

}  // namespace standin
