// What a title or a heading says of the numbers that stand without a unit: "(all in grams)", "Quantities in g", "(g per kg of meat)".
#pragma once

#include <optional>
#include <string_view>

#include "formula/lexer/quantity_text.hpp"
#include "knowledge/index/knowledge.hpp"

namespace standin {

struct SheetUnit {
    const Unit* unit = nullptr;
    std::optional<Per> per{};  ///< the amounts go with so much
};

/// Anywhere in a title.
std::optional<SheetUnit> unit_in_title(std::string_view title, const Knowledge& knowledge);

/// Of a line that says nothing else.
std::optional<SheetUnit> unit_in_heading(std::string_view line, const Knowledge& knowledge);

}  // namespace standin
