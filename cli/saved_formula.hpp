// A variant as a formula of its own, and formulas out of the JSON answers of other commands.
#pragma once

#include <string>

#include "command.hpp"
#include "standin/engine.hpp"

namespace standin::cli {

/// Which of `there` answers --variant means, from 0: the first where it does not say. `nothing` where there is none; `kind` is what one is
/// called behind "only one", if anything.
Result<std::size_t> chosen_of(const Call& call, std::size_t there, Error nothing, const std::string& kind = {});

/// As text, or as JSON where `path` ends so: dated today, in the maker's units.
std::string saved_formula(Formula formula, Units units, const std::string& path, const Engine& engine);

/// Where `text` is the answer of `adapt --json` or `swaps --json`: the formula of variant or stand-in `which` (from 1), as JSON. Other
/// text comes back as it is.
Result<std::string> formula_within(std::string text, std::size_t which, const std::string& name);

}  // namespace standin::cli
