// How large the batch becomes: a weight asked for, or what the scarcest line allows.
#pragma once

#include <string>

#include "knowledge/index/knowledge.hpp"
#include "standin/result.hpp"
#include "standin/sheet.hpp"

namespace standin {

struct Scaling {
    double factor = 1;
    Reason to{};  ///< "to 5 kg of meat"
};

/// Grams of "5 kg", "11 lb", "2400 g"; a number without its unit is asked back. `option` names it in the error.
Result<double> weight_asked(const std::string& text, const std::string& where);

/// The factor for all lines. A line named in `only` must be in the formula; of several the tightest decides, and so it does against a
/// larger weight asked for.
Result<Scaling> scaling_of(const Formula& formula, const SheetRequest& request, const Knowledge& knowledge);

/// Every weight and count times `factor`.
Formula scaled(Formula formula, double factor);

}  // namespace standin
