// A variant as a formula of its own, and formulas out of the JSON answers of other commands.
#pragma once

#include <string>

#include "command.hpp"
#include "standin/engine.hpp"

namespace standin::cli {

/// As text, or as JSON where `path` ends so: dated today, in the maker's units.
std::string saved_formula(Formula formula, Units units, const std::string& path, const Engine& engine);

/// Where `text` is the answer of `adapt --json` or `swaps --json`: the formula of variant or stand-in `which` (from 1), as JSON. Other
/// text comes back as it is.
Result<std::string> formula_within(std::string text, std::size_t which, const std::string& name);

}  // namespace standin::cli
