// Edits that no move of the search makes: what the meat that came in asks of the cooking, and casings that are not wanted.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "substitute/context.hpp"
#include "substitute/stock.hpp"

namespace standin {

/// Meat that comes in may need more heat than the maker's own core temperature gives: sets that of `formula`, and says so.
std::optional<Edit> cook_through(Formula& formula, const Prediction& base, const Context& context);

/// The core that the meat of a variant needs where the maker writes less, as `predict` works it out: other meat needs another. Whether that
/// moved.
bool cook_as_needed(Formula& formula, const Context& context);

/// The mass made up without what stands beside it, as written, that `word` excludes: a casing, a food for the pan or the coat.
Edit without_beside(const Formula& formula, const std::string& written, const std::string& word, const Stock& stock);

/// The same of everything beside the mass that `stock` leaves out.
std::vector<Edit> without_all_beside(const Formula& formula, const Stock& stock);

}  // namespace standin
