// The rest of a draft label: shares to name, what else there is room for, nutrition.
#pragma once

#include <string_view>

#include "evaluate/evaluator.hpp"
#include "standin/label.hpp"
#include "standin/prediction.hpp"

namespace standin {

/// By the rule set `rules`, and where that is silent by the general one. `prediction` needs its lines alone.
LabelDraft label_draft(const Formula& formula, const Prediction& prediction, const Evaluator& evaluator, std::string_view rules);

}  // namespace standin
