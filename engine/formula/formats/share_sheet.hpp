// Whole formulas in percentages, as the trade writes them.
//
// Of what they are is told by what adds up to 100: all lines (of the batch), the meat alone (of the meat), or the first lines with all the
// meat among them ("pork 60 %, back fat 25 %, ice 15 %"), to which the rest is added.
#pragma once

#include "formula/formats/draft.hpp"

namespace standin {

/// Finds such a sheet, and what its percentages are of; asks where nothing adds up.
void settle_sheet(Draft& draft, const Knowledge& knowledge);

/// Weighs a line that was read anew; nothing where the draft is no such sheet.
void weigh_in_sheet(const Draft& draft, DraftLine& line, const Knowledge& knowledge);

/// Holds a total that is told against the lines.
void check_total(Draft& draft, const Knowledge& knowledge);

}  // namespace standin
