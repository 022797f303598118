// What the list has that makers use beside the plain mass and the additions, said with its weight; and what is left out, never said.
#pragma once

#include "mend/mass.hpp"
#include "mend/tastes.hpp"
#include "standin/mend.hpp"

namespace standin {

/// Adds to the practice of each word what of the list serves it: something sweet to cover, something plain and cooked to thin.
void tell_of_the_list(std::vector<TastedWord>& words, const std::vector<Meant>& tastes, double mass_g, const Mending& mending,
                      const Stock& stock);

/// Takes out of all advice what names a food that the maker leaves out.
void leave_out_of_advice(MendAnswer& answer, const Formula& mass, const Stock& stock);

}  // namespace standin
