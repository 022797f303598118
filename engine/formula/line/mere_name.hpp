// What is said of a food and is a mere name: of its sort, of its maker, of where it is from.
#pragma once

#include <string_view>
#include <vector>

#include "knowledge/knowledge.hpp"

namespace standin {

/// Which words of a remark behind `food` are taken for a name: a word or two with a capital ("African blue", "Aldi"), or a word or two in
/// brackets at once behind a plant ("amaranth (terere)"). None of a remark that holds a word of harm, of exclusion or of what is done.
std::vector<bool> mere_names(std::string_view said, const Ingredient& food, std::string_view written, const Knowledge& knowledge);

/// Whether a word tells, or may tell, of the state of a food in any tongue of the lexicon.
bool may_tell_of_state(std::string_view word, const Knowledge& knowledge);

}  // namespace standin
