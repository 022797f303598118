// How far the caps of a problem let its moves come in.
#pragma once

#include <cstddef>
#include <optional>

#include "adapt/moves/problem.hpp"

namespace standin {

/// Grams of a move, used alone, that keep every cap (what a kilo takes, what the law allows); nothing where no cap counts it.
std::optional<double> room_under_caps(const Problem& problem, std::size_t move);

/// What stands in for a missing line comes in as far as the caps let it: its least is no more than that, or it would not come in at all.
void take_as_far_as_caps_let(Problem& problem);

}  // namespace standin
