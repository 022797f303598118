// "100 g bread soaked in 100 ml milk and squeezed": what the bread soaks up goes into the mass with it.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "formula/lexer/trouble.hpp"
#include "formula/line/name_text.hpp"
#include "formula/line/shares.hpp"
#include "knowledge/index/knowledge.hpp"

namespace standin {

struct SoakedIn {
    std::string food, liquid;  ///< a line each
    Reason told{};             ///< what was presumed
};

/// "30 g dried porcini, soaked in 200 ml hot water" without the amount of the water, of which nobody knows how much stays; empty where the
/// line tells none.
std::string soaked_in_plain_water(std::string_view line, const Knowledge& knowledge);

/// Of bread, crumbs and the like, with a liquid that has an amount and can be read; else nothing.
std::optional<SoakedIn> soaked_in_measured(std::string_view line, const Origin& origin, const Knowledge& knowledge);

/// A liquid that leaves water behind and little that a model would miss: milk, wine, stock; no vinegar and no brine.
bool is_soaking_liquid(const Ingredient& ingredient);

/// Of a liquid without an amount, "bread, soaked in milk": what it brings is told, and counted among the allergens.
void tell_of_soaking(const NameRead& name, ReadLine& read);

}  // namespace standin
