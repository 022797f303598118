// Why each edit, and how a variant will differ, in a maker's words.
#pragma once

#include <string>
#include <vector>

#include "adapt/variants/alternatives.hpp"
#include "adapt/variants/compared.hpp"
#include "adapt/variants/variant.hpp"

namespace standin {

/// The edits with their reasons, and what would do as well.
/// `asked`: all that was asked, also where the plan was found with some of it given up.
std::vector<Edit> explain_edits(const BuiltVariant& built, const Problem& problem, const std::vector<Goal>& asked, const Compared& compared,
                                const std::vector<Alternative>& alternatives, const Stock& stock, const Context& context);

/// How it will differ at the table.
Reason at_the_table(const Distance& distance, const Compared& compared);

/// What gives back something that the wants cost, such as brightness lost with the acid.
std::vector<Reason> what_gives_back(const Formula& base, const Distance& distance, const Compared& compared, const SwapGraph& graph,
                                    const Stock& stock, const Context& context);

}  // namespace standin
