// A part of a fruit or an egg in the words of a line: "zest of 1 lemon", "4 eggs, whites only".
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "formula/words/tongues.hpp"
#include "knowledge/index/knowledge.hpp"

namespace standin {

/// "Zest of 2 lemons", "2 limes, juice only" and "3 eggs, just the yolks" as "2 lemons zest", "2 limes juice" and "3 egg yolk".
void rewrite_parts_of_food(std::string& line, const Knowledge& knowledge);

/// "Zest and juice of 2 limes", "1 limone (scorza e succo)" as two lines; empty where it is no such line.
std::vector<std::string> two_parts_of_fruit(std::string_view line, const std::vector<Rewording>& english);

/// "zest and juice of 1 lemon"
bool names_two_parts(const std::string& line, const Knowledge& knowledge);

}  // namespace standin
