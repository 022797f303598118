// "Sage 20 g" on a list of what is on hand: a bare name that means the leaf as well as the dried herb.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "knowledge/knowledge.hpp"
#include "standin/reason.hpp"

namespace standin {

/// The name of the fresh leaf, where `name` is that of the dried herb `taken` and does not say which of the two is meant.
std::optional<std::string> leaf_called(std::string_view name, const Ingredient& taken, const Knowledge& knowledge);

/// Whether so many grams on a shelf are leaves, for nobody keeps that much of the herb dried without saying so.
bool so_much_is_fresh(double grams, const Knowledge& knowledge);

/// "read as dried thyme: ...".
Reason taken_as_dried(const Ingredient& taken, const std::string& leaf);

}  // namespace standin
