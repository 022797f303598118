// What lies there prepared: which of a line's steps are still to be done, and what it weighs as it lies.
#pragma once

#include <vector>

#include "knowledge/index/knowledge.hpp"
#include "standin/formula.hpp"

namespace standin {

/// The steps of a line that are not done yet.
std::vector<Prepared> still_to_do(const Line& line);

/// All that was or will be done to it: what is ready, and then the rest.
std::vector<Prepared> all_done(const Line& line);

/// Grams of it before any step.
double raw_grams(const Line& line, const Knowledge& knowledge);

/// Grams of it on the scale: with what is ready done, or as the line is weighed.
double lying_grams(const Line& line, const Knowledge& knowledge);

/// What the list has ready of a line's food goes with the line.
void take_ready(Line& line, const Inventory& have);

}  // namespace standin
