// What swaps say beside a stand-in, where a food is left out.
#pragma once

#include <vector>

#include "knowledge/index/knowledge.hpp"
#include "standin/advice.hpp"
#include "standin/formula.hpp"
#include "substitute/stock.hpp"

namespace standin {

/// Takes out of the notes of `edits` and of what they ask whatever names a food that `request` leaves out and `formula` has not.
void leave_out_of_notes(std::vector<Edit>& edits, const Formula& formula, const AdaptRequest& request, const Stock& stock,
                        const Knowledge& knowledge);

}  // namespace standin
