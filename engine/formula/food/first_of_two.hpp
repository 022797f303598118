// "½ lb beef suet or lamb fat": the line with the first of two foods alone.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "formula/amounts/shares.hpp"
#include "knowledge/index/knowledge.hpp"

namespace standin {

struct FirstOfTwo {
    std::string line;   ///< without the second
    std::string other;  ///< the second, as written
};

/// The ways to leave the second out, the likeliest first. None where the line says that something is not in it.
std::vector<FirstOfTwo> firsts_of_two(std::string_view line, const Knowledge& knowledge);

/// Whether both are so near that the first may be taken: of one family, tissue or role, and no meat of the mass.
bool may_take_first(const FirstOfTwo& first, const ReadLine& read, const Knowledge& knowledge);

/// Says what was taken, and counts the allergens of the second.
void tell_of_second(const FirstOfTwo& first, ReadLine& read, const Knowledge& knowledge);

}  // namespace standin
