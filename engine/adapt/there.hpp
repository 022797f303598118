// What is there of each line of a formula.
#pragma once

#include <map>
#include <string>

#include "adapt/problem.hpp"

namespace standin {

/// Fills in the grams of each line that are to be had, and which lines are missing, or left out. Several lines of one ingredient share what
/// there is, kept ones first. Returns what is left of each ingredient on the list, in grams as picked or bought.
std::map<std::string, double> take_what_is_there(Problem& problem, const Stock& stock, const Knowledge& knowledge);

}  // namespace standin
