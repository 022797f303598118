// A heading that says what the amounts below it go with: "Spices per kg of meat:", "Gewürze (pro kg Masse):", "Seasonings (per 5 lb)".
#pragma once

#include <optional>
#include <string_view>

#include "formula/lexer/quantity_text.hpp"
#include "knowledge/index/knowledge.hpp"
#include "standin/reason.hpp"

namespace standin {

/// Nothing where the line is no such heading. A base that does not say of what is of the meat, as makers reckon.
std::optional<Per> heading_base(std::string_view line, const Knowledge& knowledge);

/// "1 kg of meat", as a person writes it.
std::string base_text(const Per& base);
/// The same as a fact.
Reason base_reason(ReasonKind kind, const Per& base);

}  // namespace standin
