// Who wants it leaner cuts the fat off the cut that he has, or pulls the skin off: what the list has as it is sold is there trimmed as
// well.
#pragma once

#include "adapt/goals/wants.hpp"
#include "standin/advice.hpp"
#include "substitute/context.hpp"

namespace standin {

/// The request with each such cut on its list a second time, as it is trimmed; unchanged where no word asks for a leaner one, or where
/// there is no list.
AdaptRequest with_trimmed_cuts(AdaptRequest request, const std::vector<Goal>& goals, const Formula& formula, const Knowledge& knowledge);

/// Tells of each variant that has such a cut what it is cut from.
void tell_what_is_trimmed(AdaptAnswer& answer, const AdaptRequest& asked, const AdaptRequest& trimmed, const Knowledge& knowledge);

}  // namespace standin
