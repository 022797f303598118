// What a text beside the lines says of the foods in them: judged as if it stood on their own lines.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "knowledge/index/knowledge.hpp"
#include "standin/formula.hpp"
#include "standin/result.hpp"

namespace standin {

/// A note, a remark, an instruction.
struct SaidBeside {
    std::string text, where;
    bool method = false;  ///< what is done to a food, where many words are of the work and few of the food's state
};

struct LineAsWritten {
    std::string_view written;
    const Line* line = nullptr;
};

struct SaidOfLines {
    std::optional<Error> danger;
    std::vector<Reason> told;
};

/// "The zucchini are bitter this year", "beans straight from the sack, no soaking".
SaidOfLines said_of_lines(const SaidBeside& said, const std::vector<LineAsWritten>& lines, const Knowledge& knowledge);

}  // namespace standin
