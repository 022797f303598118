// What a line of a formula leaves open, as a question with numbered answers.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "standin/engine.hpp"

namespace standin::cli {

/// What may stand in place of a line.
struct Choice {
    std::string shown;  ///< to the maker
    std::string line;   ///< then stands in the formula
};

struct Doubt {
    std::string question;
    std::vector<Choice> choices;
};

/// Nothing where the line leaves nothing open.
std::optional<Doubt> doubt_of(const LineReading& line, const Engine& engine);

/// What the maker typed as an answer to `line`: a line of its own, another name for the food, a weight. Nothing where it fits nowhere.
std::optional<std::string> line_from(const std::string& typed, const std::string& line, const Engine& engine);

}  // namespace standin::cli
