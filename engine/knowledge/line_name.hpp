// What a line's food is called on pages.
#pragma once

#include <algorithm>
#include <string>

#include "knowledge/knowledge.hpp"
#include "standin/formula.hpp"

namespace standin {

/// As the maker calls it where it is no record, else by its record.
inline const std::string& line_name(const Line& line, const Knowledge& knowledge) {
    return line.called.empty() ? knowledge.ingredient(line.ingredient)->names.front() : line.called;
}

/// Whether the line says that it is raw milk, or is made of it.
inline bool is_of_raw_milk(const Line& line) {
    return std::any_of(line.notes.begin(), line.notes.end(),
                       [](const Reason& note) { return note.kind == ReasonKind::hazard_told && note.role == "raw-dairy"; });
}

/// The name with that in it, as it is bought and labelled.
inline std::string with_raw_milk(const std::string& name, Tissue tissue) {
    return tissue == Tissue::liquid ? "raw " + name : name + " of raw milk";
}

}  // namespace standin
