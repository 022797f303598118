// Trust no solver: a variant is checked from its formula alone before it may be shown.
#pragma once

#include <string>
#include <vector>

#include "adapt/moves/problem.hpp"

namespace standin {

/// Everything wrong with `variant`, in words; empty when it keeps every kept line, the stock, the exclusions, the meat and the
/// conditions among `goals`.
std::vector<std::string> faults_of(const Formula& variant, const Problem& problem, const Stock& stock, const std::vector<Goal>& goals,
                                   const Distance& distance, const Nominal& nominal);

}  // namespace standin
