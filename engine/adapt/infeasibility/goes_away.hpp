// A want from which the nearest that can be made goes away: who asks for it hotter and is given it milder is told so before all else.
#pragma once

#include <vector>

#include "adapt/goals/wants.hpp"
#include "standin/advice.hpp"
#include "substitute/context.hpp"

namespace standin {

/// One for each want that the first variant of `answer` leaves clearly further off than `base` has it, with how much of a missing line of
/// that kind would do what was asked beside the variant.
std::vector<Reason> wants_gone_from(const AdaptAnswer& answer, const Formula& base, const std::vector<Goal>& goals, const Context& context);

}  // namespace standin
