// A word such as "firmer" asks for a step, not for another sausage. Where the whole step can only be had by giving up what the sausage is,
// the answer that goes part of the way and stays near it stands first, and says so; the whole step stands after it.
#pragma once

#include "adapt/goals/wants.hpp"
#include "standin/advice.hpp"
#include "substitute/context.hpp"

namespace standin {

/// Whether all that was asked is words, and the nearest answer that does it is no longer this sausage.
bool goes_too_far(const AdaptAnswer& answer, const std::vector<Goal>& goals, const Context& context);

/// The first variant of `gentle` before those of `answer`, where it is clearly nearer and goes far enough to be felt.
void put_part_way_first(AdaptAnswer& answer, AdaptAnswer gentle, std::size_t top, const Context& context);

/// Whether it changes more than the making.
bool weighs_anew(const Variant& variant);

/// The answer that changes nothing but the making, `made`, where that one goes most of the way of each want. The first variant of `answer`
/// weighs something anew.
void put_making_first(AdaptAnswer& answer, Variant made, std::size_t top, const Context& context);

}  // namespace standin
