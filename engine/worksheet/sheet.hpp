// The whole sheet.
#pragma once

#include <functional>
#include <string_view>

#include "knowledge/knowledge.hpp"
#include "standin/result.hpp"
#include "standin/sheet.hpp"

namespace standin {

/// What the sheet asks of the models.
struct Foretell {
    std::function<Prediction(const Formula&)> prediction;  ///< with bands and safety
    std::function<double(const Formula&)> bind;            ///< in the middle
};

/// `rules` as for the safety room. A formula that leaves the order of mixing open gets salt first and acid last where that binds better.
Result<Sheet> sheet_of(const Formula& formula, const SheetRequest& request, const Knowledge& knowledge, std::string_view rules,
                       const Foretell& foretell);

}  // namespace standin
