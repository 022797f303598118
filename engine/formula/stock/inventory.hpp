// What is on hand, as lines ("spinach 400 g", "chard plenty", "no cilantro", "nothing else") or JSON.
#pragma once

#include <string_view>

#include "core/json_tree.hpp"
#include "knowledge/index/knowledge.hpp"
#include "standin/formula.hpp"
#include "standin/result.hpp"

namespace standin {

/// A word is first looked for among the lines of `formula`, which may be null.
Result<Inventory> read_plain_inventory(std::string_view text, std::string_view file, const Knowledge& knowledge, const Formula* formula);
Result<Inventory> read_json_inventory(const JsonNode& root, std::string_view file, const Knowledge& knowledge, const Formula* formula);

}  // namespace standin
