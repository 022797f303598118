// Lean and fat of one block of meat: where the one is swapped, the other gives way so that fat and weight of the block stay.
#pragma once

#include <vector>

#include "standin/advice.hpp"
#include "substitute/context.hpp"

namespace standin {

/// `swapped` is `base` with line number `line` replaced, lean or fat by meat of another fatness. Moves the weight of that line and of its
/// biggest counterpart (Pearson's square, within bounds) and says how the counterpart moved. Nothing where nothing has to move, or where
/// it would take more than `most` grams of the stand-in.
std::vector<Trim> hold_meat_block(Formula& swapped, const Formula& base, std::size_t line, Role role, double most, const Context& context);

/// What is weighed for its cure and not for its fat keeps its weight: the biggest fat line beside it gives way, or fills up, by what it
/// brings of fat. Nothing where `base` has no other fat.
std::vector<Trim> hold_fat_beside(Formula& swapped, const Formula& base, std::size_t line, const Context& context);

}  // namespace standin
