// One variant of an adapted formula.
#pragma once

#include <string>

#include "standin/engine.hpp"
#include "terminal.hpp"

namespace standin::cli {

std::string variant_part(const Variant& variant, const Prediction& base, const Engine& engine, const Look& look);

}  // namespace standin::cli
