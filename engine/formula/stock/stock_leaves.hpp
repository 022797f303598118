// "Sage 20 g" on a list of what is on hand: a bare name that means the leaf as well as the dried herb.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "formula/line/line_text.hpp"
#include "knowledge/index/knowledge.hpp"
#include "standin/reason.hpp"

namespace standin {

/// The name of the fresh leaf, where `name` is that of the dried herb `taken` and does not say which of the two is meant.
std::optional<std::string> leaf_called(std::string_view name, const Ingredient& taken, const Knowledge& knowledge);

/// "sage 20 g" are leaves, for nobody keeps that much of the herb dried without saying so: the line is read again so. Nothing where it
/// stays what it was read as.
std::optional<ReadLine> read_as_leaf(const ReadLine& read, std::string_view text, const Origin& origin, const Knowledge& knowledge);

/// "read as dried thyme: ...".
Reason taken_as_dried(const Ingredient& taken, const std::string& leaf);

}  // namespace standin
