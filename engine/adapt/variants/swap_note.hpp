// What a swap's note says beside the stand-in's name.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "substitute/stock.hpp"

namespace standin {

/// Of the last of the `swaps` that lead there. The stand-in's own name is not said twice; by a detour the note is of the food between, and
/// says so.
std::string note_of(const std::vector<std::size_t>& swaps, const Knowledge& knowledge);

/// Likewise, without advice to add a food that `stock` leaves out, and with what is lost of `line` that was the point of it: its smoke.
std::string note_of(const std::vector<std::size_t>& swaps, const Line& line, const Line& food, const Stock& stock);

/// Whether a clause of a note tells the maker to take a food as well: "add", "pound a nut with it".
bool asks_to_add(std::string_view clause, const Knowledge& knowledge);

/// `note` without the advice in it to add what is left out.
std::string without_left_out(const std::string& note, const Stock& stock);

}  // namespace standin
