// What multiplies into the bind of a batch, and what each of it costs.
#pragma once

#include <vector>

#include "evaluate/evaluator.hpp"
#include "standin/why.hpp"

namespace standin {

/// At the middle of every band; what costs most first, binder last.
std::vector<Factor> bind_factors(const Formula& formula, const Nominal& nominal);

}  // namespace standin
