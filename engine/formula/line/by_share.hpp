// What a bare name means by how much of it a kilo of the batch holds: two grams of thyme are dried, fifty are leaves.
#pragma once

#include <optional>

#include "formula/food/name_text.hpp"
#include "formula/lexer/quantity_text.hpp"

namespace standin {

/// The other lines of the formula, as far as they could be read.
struct Around {
    double grams = 0;             ///< of all of them; 0: not known
    bool meat = false;            ///< some of them are meat, so they are most of the batch
    bool among_spices = false;    ///< the lines above and below are dry spices by weight
    Whole share = Whole::none;    ///< what a share is of that does not say: the meat, or what the other shares say; none: ask
    bool in_sheet = false;        ///< all lines are shares, so a percentage tells nothing else
    std::optional<Per> base{};    ///< what the heading above says that the amounts go with
    const Unit* unit = nullptr;   ///< of numbers that stand without one; null: they count pieces
    bool unit_said = false;       ///< by a title or a heading
    std::optional<bool> limes{};  ///< whether "limón" is the lime there; absent: not told
};

/// Turns `name` to the form that so little of it must be, or says what is open. Nothing where the line tells the form or the batch is
/// not known.
std::optional<Error> settle_by_share(NameRead& name, const AmountText& amount, const Around& around, const Knowledge& knowledge);

}  // namespace standin
