// Trust no solver: a variant is checked from its formula alone before it may be shown.
#pragma once

#include <string>
#include <vector>

#include "adapt/moves/problem.hpp"
#include "evaluate/batch.hpp"

namespace standin {

/// What the conditions are judged by, as at every want that is shown: the draws of the base and of the variant, and in how large a share of
/// them a condition must hold.
struct JudgedOn {
    const std::vector<State>& base;
    const std::vector<State>& variant;
    double sure = 0.5;
};

/// Everything wrong with `variant`, in words; empty when it keeps every kept line, the stock, the exclusions, the meat and the
/// conditions among `goals`.
std::vector<std::string> faults_of(const Formula& variant, const Problem& problem, const Stock& stock, const std::vector<Goal>& goals,
                                   const Distance& distance, const JudgedOn& draws, const Nominal& nominal);

}  // namespace standin
