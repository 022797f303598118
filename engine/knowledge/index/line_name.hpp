// What a line's food is called on pages.
#pragma once

#include <algorithm>
#include <string>

#include "knowledge/index/knowledge.hpp"
#include "standin/formula.hpp"

namespace standin {

inline bool is_raw_milk(const Reason& told) { return told.kind == ReasonKind::hazard_told && told.role == "raw-dairy"; }

/// Whether the line says that it is raw milk, or is made of it.
inline bool is_of_raw_milk(const Line& line) { return std::any_of(line.notes.begin(), line.notes.end(), is_raw_milk); }

/// The name with that in it, as it is bought, weighed and labelled.
inline std::string with_raw_milk(const std::string& name, Tissue tissue) {
    return tissue == Tissue::liquid ? "raw " + name : name + " of raw milk";
}

/// As the maker calls it where it is no record, else by its record.
inline std::string line_name(const Line& line, const Knowledge& knowledge) {
    if (!line.called.empty()) return line.called;
    const Ingredient& food = *knowledge.ingredient(line.ingredient);
    return is_of_raw_milk(line) ? with_raw_milk(food.names.front(), food.tissue) : food.names.front();
}

}  // namespace standin
