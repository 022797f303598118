// What it costs to lose a line: its character.
//
// Models feel the acid, the burn or the green that goes with a line, but not that a sausage without its oregano or its mustard is another
// one. That is priced, squared as everything that adds up to a distance, by what the line is to the formula:
//   character = identity + dose * (share of its role's dose) + aroma * (share of the aroma) + bulk * (share of all that is no meat) + title
// and a line that is short costs a margin over what its worst stand-in at hand would cost by itself beside that, so that nothing is left
// out that could be replaced. The loss of a part counts by the square of the part.
#pragma once

#include <string>
#include <vector>

#include "adapt/moves/problem.hpp"

namespace standin {

/// The squared cost of losing each line whole, one a line. What a want asks to have less of is not missed as a dose; salt and water that
/// are there cost nothing here: the properties they make are held. `problem` has its moves and processes already.
std::vector<double> losses_in(const Problem& problem, const Distance& distance, const Context& context);

/// Which share of each line a want asks to be without, and nobody misses: half of a chile where half the heat is asked for.
std::vector<double> spared_in(const Problem& problem, const Distance& distance, const Context& context);

/// What the maker wants in a line's place comes in, whatever it costs.
void take_the_ideas(Problem& problem, const Stock& stock, const Context& context);

/// What is lost of a line of which the share `gone` is not made up for: what lies beyond what is spared, of what is not; below 0 nothing.
double lost_of(const Problem& problem, std::size_t line, double gone);

/// Which share of each line is lost after `grams` of every move, 0 where it is made up for or spared.
std::vector<double> lost_shares(const Problem& problem, const std::vector<double>& grams);

/// What is lost, squared: by each line the square of its lost share times its loss.
double lost_square(const Problem& problem, const std::vector<double>& grams);

}  // namespace standin
