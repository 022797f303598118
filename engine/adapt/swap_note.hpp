// What a swap's note says beside the stand-in's name.
#pragma once

#include <string>
#include <vector>

#include "knowledge/knowledge.hpp"

namespace standin {

/// Of the last of the `swaps` that lead there. The stand-in's own name is not said twice; by a detour the note is of the food between, and
/// says so.
std::string note_of(const std::vector<std::size_t>& swaps, const Knowledge& knowledge);

}  // namespace standin
