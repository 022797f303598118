// Variants as a list that is shown: in order, each once, only those that meet what was asked where some do.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "standin/advice.hpp"

namespace standin {

/// Each by its place in the list, from 1.
void number(std::vector<Variant>& variants);

/// Whether a food is had by the maker: in the formula, or on the list.
using Had = std::function<bool(const std::string& food)>;

void put_in_order(
    std::vector<Variant>& variants, const Had& had = [](const std::string&) { return false; });

/// A plan that changes nothing is no answer to wants that are not met; nor is one that brings nothing that was asked nearer than the
/// original has it, where `all_there` says that the original can be made.
void leave_out_idle(std::vector<Variant>& variants, bool all_there);

/// Whether nothing has to change, and the batch as it is has what was asked as often as not.
bool is_a_toss_up(const AdaptAnswer& answer);

/// What goes further towards numbers that cannot all be had before the others, of which those stay that leave the sausage nearer.
void put_nearest_first(AdaptAnswer& answer, Variant first, std::size_t top);

/// The first of `surer`, asked for at better odds, beside a formula that need not change.
void put_surer_beside(AdaptAnswer& answer, AdaptAnswer surer);

/// What was looked for with the wants as aims only may meet them after all: then nothing stands against them.
void clear_conflict_if_met(AdaptAnswer& answer, const Had& had);

/// The answer with what all that it shows asks of safety.
AdaptAnswer with_safety(AdaptAnswer answer);

}  // namespace standin
