// A cut that comes in for another for the sake of a want.
#pragma once

#include <cstddef>

#include "adapt/distance/asked_roles.hpp"
#include "substitute/stock.hpp"

namespace standin {

/// For a mass that is to hold or to bite firmer, leaner cuts of its own animals: those of the list, and any where nothing else does it.
void open_leaner_cuts(AskedRoles& asked, const Formula& formula, const Distance& distance, const Stock& stock, Leeway leeway);

/// Whether `food` may come in for line `l`, of which there is enough, for what was asked of the fat or of the bite.
bool may_change_the_cut(const Formula& formula, std::size_t l, const Ingredient& food, const Distance& distance, const Stock& stock,
                        const Context& context);

}  // namespace standin
