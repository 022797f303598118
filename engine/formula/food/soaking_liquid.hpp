// What a food is soaked in: a liquid that goes in with it, and water of which nobody knows how much stays.
#pragma once

#include <string>
#include <string_view>

#include "formula/amounts/shares.hpp"
#include "formula/food/name_text.hpp"
#include "knowledge/index/knowledge.hpp"

namespace standin {

/// "30 g dried porcini, soaked in 200 ml hot water" without the amount of the water, of which nobody knows how much stays; empty where the
/// line tells none.
std::string soaked_in_plain_water(std::string_view line, const Knowledge& knowledge);

/// A liquid that leaves water behind and little that a model would miss: milk, wine, stock; no vinegar and no brine.
bool is_soaking_liquid(const Ingredient& ingredient);

/// Of a liquid without an amount, "bread, soaked in milk": what it brings is told, and counted among the allergens.
void tell_of_soaking(const NameRead& name, ReadLine& read);

}  // namespace standin
