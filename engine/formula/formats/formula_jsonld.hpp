// A recipe of schema.org as a formula: JSON-LD by itself, or in the scripts of a saved web page.
//
// Read are name, recipeIngredient (or the older "ingredients") and recipeYield, which becomes a note. Instructions are passed over, but for
// the lines on the process that formula_jsonld writes.
#pragma once

#include <string>
#include <string_view>

#include "core/json_tree.hpp"
#include "formula/formats/draft.hpp"
#include "knowledge/index/knowledge.hpp"
#include "standin/result.hpp"

namespace standin {

/// Whether JSON is JSON-LD rather than a formula of our own.
bool is_json_ld(const JsonNode& root);

/// Fails when there is no recipe in it, or several.
Result<Draft> read_json_ld(const JsonNode& root, std::string_view file, const Knowledge& knowledge);

/// Likewise for the scripts of a page; places are those in the page.
Result<Draft> read_page(std::string_view page, std::string_view file, const Knowledge& knowledge);

}  // namespace standin
