// Numbers the way people write them: 1 1/2, 1½, 1-1/2, 2-3, "1,5", half a, a dozen, one and a half.
#pragma once

#include <optional>
#include <string_view>

#include "formula/lexer/cursor.hpp"
#include "standin/band.hpp"

namespace standin {

struct Number {
    Band band;                  ///< low = high unless a range ("2-3", mid halfway) or "about" (10 % either way, judgement) was written
    bool unsure_dot = false;    ///< "1.500": decimals, or thousands as much of Europe writes them; `band` holds the decimals
    bool unsure_comma = false;  ///< "2,400": thousands or decimals; `band` holds the thousands
};

/// One letter for a fraction, and the same in digits: "½", "1/2".
struct FractionSign {
    std::string_view sign, digits;
    double value = 0;
};

/// The one that `text` starts with; null where it starts with none.
const FractionSign* fraction_sign(std::string_view text);

/// Passes "about", "approx." and the like; false, and nothing passed, when there is none.
bool eat_about(Cursor& cursor);

/// Passes a number; moves nothing when there is none. `words` false: digits only.
std::optional<Number> number_at(Cursor& cursor, bool words = true);

/// Passes a duration such as "3 min", "1 h 30 min", "2 days"; in minutes (of a range the middle).
std::optional<double> minutes_at(Cursor& cursor);

}  // namespace standin
