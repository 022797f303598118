// What a line's food is called on pages.
#pragma once

#include <string>

#include "knowledge/knowledge.hpp"
#include "standin/formula.hpp"

namespace standin {

/// As the maker calls it where it is no record, else by its record.
inline const std::string& line_name(const Line& line, const Knowledge& knowledge) {
    return line.called.empty() ? knowledge.ingredient(line.ingredient)->names.front() : line.called;
}

}  // namespace standin
