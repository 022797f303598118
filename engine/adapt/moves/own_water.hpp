// A wet stand-in for a dry binder, boiled rice for crumbs, brings water of its own: the liquid beside it goes down.
#pragma once

#include <optional>

#include "adapt/moves/problem.hpp"
#include "substitute/context.hpp"

namespace standin {

/// Water that a gram of `move` brings in place of something dry; 0 for other moves.
double own_water(const Problem& problem, const Move& move, const Context& context);

/// The move for the biggest plain liquid that may go down for it, where something of the kind may come in.
void take_water_off(Problem& problem, const Context& context);

/// Whether `move` takes water off for it.
bool takes_water_off(const Problem& problem, const Move& move);

/// What holds the liquids down by a part of that water, as far as they may go; nothing where none comes in.
std::optional<LinearConstraint> water_follows(const Problem& problem, const Context& context);

}  // namespace standin
