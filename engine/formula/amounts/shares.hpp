// Lines given as a share of the meat or of the batch; weighed when all other lines are.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "formula/lexer/quantity_text.hpp"
#include "formula/lexer/trouble.hpp"
#include "knowledge/index/knowledge.hpp"
#include "standin/formula.hpp"
#include "standin/reading.hpp"

namespace standin {

struct Share {
    Whole of = Whole::meat;       ///< meat or batch
    Band fraction;                ///< grams a gram
    std::optional<double> count;  ///< pieces a gram
};

/// What makes a reading less than sure.
struct LineDoubt {
    Confidence confidence = Confidence::likely;
    Reason what{};
    bool always = false;  ///< goes with the line onto every page
};

/// Whether it leaves open which form of the food is meant.
bool is_of_form(ReasonKind kind);

struct ReadLine {
    Line line;
    std::optional<Share> share;  ///< then `line.grams` is still empty
    std::string where;
    std::vector<LineDoubt> doubts{};
    bool translated = false;  ///< read word for word from another tongue
    bool unit_given = false;  ///< its number stands without a unit and was read in that of the sheet
};

/// Weighs the shares and checks the weights: meat first, then shares of meat, then shares of the batch (themselves counted in it).
std::vector<Line> settle(std::vector<ReadLine> lines, const Knowledge& knowledge, Troubles& troubles);

}  // namespace standin
