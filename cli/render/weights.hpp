// The weights of a variant beside those of the formula it was made from.
#pragma once

#include <string>
#include <vector>

#include "standin/advice.hpp"

namespace standin::cli {

struct WeightRow {
    const PredictedLine* now = nullptr;         ///< null: left out
    const PredictedLine* before = nullptr;      ///< null: it came in
    const PredictedLine* instead_of = nullptr;  ///< of what came in: what it stands for
    bool alone = false;                         ///< of that line nothing is left and nothing else stands for it
};

/// In the formula's order, a stand-in behind its line.
std::vector<WeightRow> weight_rows(const Prediction& base, const Variant& variant);

}  // namespace standin::cli
