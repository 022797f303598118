// One variant of an adapted formula.
#pragma once

#include <string>

#include "render/extras.hpp"
#include "standin/engine.hpp"
#include "terminal.hpp"

namespace standin::cli {

/// What goes for every variant of a page.
struct VariantPage {
    const Prediction& base;
    const Engine& engine;
    Units units;
    const Look& look;
    const Extras& beside;
};

/// Weights beside the old ones, what changes, why, what is new to mind.
std::string variant_part(const Variant& variant, const VariantPage& page);

/// The same in three lines: what sets it apart from the first, where all of it is too much.
std::string variant_in_three_lines(const Variant& variant, const Variant& first, const VariantPage& page);

/// The numbers behind it: distance, wants, what moves, the reasons in full.
std::string variant_in_full(const Variant& variant, const VariantPage& page);

}  // namespace standin::cli
