// Turns of phrase that say in several words what a name or a preparation says in one; they are rewritten before the line is read.
//   juice of 2 lemons -> 2 lemons juice    1 lemon, zested -> 1 lemon zest    leaves from 6 sprigs thyme -> 6 sprigs thyme, leaves only
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "knowledge/index/knowledge.hpp"

namespace standin {

/// Blanks of all kinds, leaders ("salt ..... 18 g") and empty tick boxes to spaces. The line keeps its length.
void clean_line(std::string& line, const Knowledge& knowledge);

/// Past blanks, bullets and numbering ("- ", "2) ", "3. "), to where the words of the line start.
std::size_t line_start(const std::string& line);

/// Rewrites the phrases above; what stands before them keeps its place.
void rewrite_phrases(std::string& line, const Knowledge& knowledge);

/// "500 g spinach (weight after blanching)": the preparations, and a mark that the weight is of what came of them.
void rewrite_weighed_after(std::string& line, const Knowledge& knowledge);

/// Takes what comes on top and has no weight of its own off the end: "or to taste", "plus more for dusting". Empty when nothing does.
std::string take_extra(std::string& line, const Knowledge& knowledge);

/// Takes "with a little of the salt", "in the wine": what has a line of its own and is only named here. Empty when nothing is.
std::string take_of_another_line(std::string& line, const Knowledge& knowledge);

/// Blanks "some" and the like before a name where an amount follows: "some pork, about 2 kg".
void take_idle_start(std::string& line, const Knowledge& knowledge);

/// "Per kg of meat: 17 g salt" as "17 g salt per kg of meat".
void turn_base_first(std::string& line, const Knowledge& knowledge);

}  // namespace standin
