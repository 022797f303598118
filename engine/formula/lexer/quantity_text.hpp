// Amounts the way people write them, before it is known of what: "1 1/2 cups", "2 lb 4 oz", "2 x 400 g", "1.8 % of meat", "a pinch".
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "formula/lexer/measures.hpp"
#include "formula/lexer/number_text.hpp"

namespace standin {

struct AmountPart {
    Band number;
    const Unit* unit = nullptr;  ///< null: none written
};

/// What an amount is a share of; `unsaid` where it is one but of what was left out.
enum class Whole { none, meat, batch, unsaid };

struct AmountText {
    std::vector<AmountPart> parts;  ///< added up
    Whole of = Whole::none;
    double per_grams = 0;   ///< the amount goes with this much meat or batch ("per kg of meat"); 0: it stands alone
    std::string_view size;  ///< "small", "medium" or "large", or empty
    bool unsure_comma = false, unsure_dot = false;
    const Unit* container = nullptr;  ///< what a weight was written to stand in: "2 x 400 g cans"
    bool packed = false;              ///< "2 packed cups"
    bool filled = false;              ///< "2 heaped tsp": counted in already
};

/// Passes an amount; moves nothing when there is none. `with_unit` false: the number only.
std::optional<AmountText> amount_at(Cursor& cursor, bool with_unit = true);

/// "of meat" or "of the batch" where the cursor stands; unsaid when there is neither.
Whole whole_at(Cursor& cursor);

/// "per kg of meat" or "/lb of batch" where the cursor stands.
struct Per {
    double grams = 0;
    Whole of = Whole::unsaid;
};
std::optional<Per> per_at(Cursor& cursor);

}  // namespace standin
