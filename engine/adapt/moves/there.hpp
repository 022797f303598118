// What is there of each line of a formula.
#pragma once

#include <map>
#include <string>

#include "adapt/moves/problem.hpp"

namespace standin {

/// Fills in the grams of each line that are to be had, and which lines are missing, or left out. Several lines of one ingredient share what
/// there is, kept ones first. Returns what is left of each ingredient on the list, in grams as picked or bought.
std::map<std::string, double> take_what_is_there(Problem& problem, const Stock& stock, const Knowledge& knowledge);

/// Whether there is no more of a line than the formula weighs: it is only taken to be there, and the list itself has something of its role.
bool no_store_of(const Line& line, const Stock& stock);

}  // namespace standin
