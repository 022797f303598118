// Headings such as "per kg of meat", and what is weighed by what stands beside it.
#pragma once

#include "formula/formats/draft.hpp"
#include "formula/line/by_share.hpp"

namespace standin {

/// What a line under the base `base` is to know; zero: under none.
Around around_line(const Draft& draft, std::size_t base);

/// Settles what stands under headings such as "per kg of meat", once all lines are read: a list that brings the meat itself is the whole
/// recipe or asked about.
void settle_bases(Draft& draft, const Knowledge& knowledge);

/// Whether a line that was not understood may be of the meat that shares are of.
bool misses_meat(const Draft& draft, const Knowledge& knowledge);

}  // namespace standin
