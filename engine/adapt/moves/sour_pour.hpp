// What is poured in for its sour, juice, vinegar and wine alike: of all of it a loose mass takes only so much before it is slack.
#pragma once

#include <optional>

#include "adapt/moves/problem.hpp"

namespace standin {

/// The sour liquids of a variant together stay within what a kilo takes; of a formula that is beyond it no more comes in. Nothing where
/// none is brought in.
std::optional<LinearConstraint> sour_pour_limit(const Problem& problem, const Context& context);

}  // namespace standin
