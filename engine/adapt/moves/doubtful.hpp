// Stand-ins of which one packet in many holds what is left out: they come in only where nothing else will do.
#pragma once

#include "adapt/moves/problem.hpp"
#include "substitute/stand_ins.hpp"

namespace standin {

/// Whether a food that comes in with it is in doubt; what the formula has already is the maker's own.
bool is_doubtful(const Candidate& candidate, const Problem& problem, const Stock& stock);

/// Whether a stand-in that is in no doubt takes most of what is missing of the line.
bool has_sure_stand_in(const Problem& problem, std::size_t l, const Stock& stock);

}  // namespace standin
