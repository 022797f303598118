// Salt that follows what comes in or goes: weighed to the meat as before, or left alone where nobody would weigh so little.
#pragma once

#include "adapt/moves/problem.hpp"
#include "adapt/search/search.hpp"

namespace standin {

/// The plan with the salt that follows it as it was to the meat, or where it was. Salt that is asked about is as the search has it.
Plan with_salt_closed(const Plan& plan, const Problem& problem, const Distance& distance, const Context& context);

}  // namespace standin
