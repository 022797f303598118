// Cold fat in the plain mass of a lean mass that bites tight: fat between the lean makes the bite short.
#pragma once

#include "mend/plain.hpp"

namespace standin {

/// Puts into `plain` so much fat as the readings ask for, as a share of the plain mass, where `mass` is leaner than `lean_below` % fat: the
/// formula's own, else firm fat of its animals, such as the list names or a shop has. Nothing where there is none.
/// `within`: the plain mass weighs no more for it.
void put_cold_fat(Plain& plain, const Formula& mass, const std::vector<Meant>& tastes, const Stock& stock, const Context& context,
                  bool within = false);

}  // namespace standin
