// The whole sheet.
#pragma once

#include <string_view>

#include "evaluate/checked_formula.hpp"
#include "evaluate/evaluator.hpp"
#include "standin/result.hpp"
#include "standin/sheet.hpp"

namespace standin {

/// `rules` as for the safety room. A formula that leaves the order of mixing open gets salt first and acid last where that binds better.
Result<Sheet> sheet_of(const CheckedFormula& formula, const SheetRequest& request, const Evaluator& evaluator, std::string_view rules);

}  // namespace standin
