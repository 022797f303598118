// The salt of a batch follows what comes in and goes: salty food, bread that brought its own, meat that weighs more or less.
#pragma once

#include "adapt/distance/distance.hpp"
#include "adapt/moves/problem.hpp"

namespace standin {

/// Capers and salted fish are no salt: what they bring is made up for by the salt that is.
bool plain_salt(const Ingredient& food, const Knowledge& knowledge);

/// Whether anything among the moves so far, or what is missing, gives the salt a reason to move. Water never follows: what is absent takes
/// its own along.
bool salt_follows(const Problem& problem, const Distance& distance, const Context& context);

/// By what share the salt line `l` may be raised: as far as a maker trims it, or as far as what is gone was salty.
double salt_share(const Problem& problem, std::size_t l, double trim, double slack, const Context& context);

}  // namespace standin
