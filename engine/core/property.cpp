#include "standin/property.hpp"

#include <string>

#include "core/called.hpp"
#include "core/names.hpp"

namespace standin {
namespace {

constexpr std::array<PropertyInfo, property_count> table{{
    {"salt_pct", "salt", "% of batch", "salt", 2},
    {"salt_pct_of_meat", "salt", "% of meat", "", 2},
    {"water_phase_salt_pct", "salt in the water", "%", "", 2},
    {"fat_pct", "fat", "% of batch", "fat", 1},
    {"fat_pct_of_meat", "fat", "% of meat", "", 1},
    {"protein_pct", "protein", "% of batch", "protein", 1},
    {"water_pct", "water", "% of batch", "water", 1},
    {"ph", "pH", "", "ph", 2},
    {"sourness_mmol_kg", "sourness", "mmol/kg", "sourness", 1},
    {"water_activity", "water activity", "", "", 3},
    {"heat_mg_kg", "capsaicinoids", "mg/kg", "heat", 2},
    {"heat_shu", "heat", "SHU", "", 0},
    {"burn_mg_kg", "burn on the word scale", "mg/kg", "", 2},
    {"chlorophyll_mg_kg", "chlorophyll", "mg/kg", "", 0},
    {"greenness", "green (minus a*, rested)", "", "green", 1},
    {"hue_deg", "hue, rested", "degrees", "", 0},
    {"bind", "bind", "of 100", "bind", 0},
    {"firmness", "firmness", "of 100", "firmness", 0},
    {"cook_loss_pct", "cook loss", "%", "loss", 1},
    {"cooked_water_pct", "water, cooked", "%", "", 1},
    {"cooked_fat_pct", "fat, cooked", "%", "", 1},
    {"cooked_protein_pct", "protein, cooked", "%", "", 1},
    {"cooked_salt_pct", "salt, cooked", "%", "", 2},
    {"cooked_ph", "pH, cooked", "", "", 2},
    {"juice", "water and fat left, cooked", "g to a gram of protein", "", 2},
}};

}  // namespace

const PropertyInfo& info(Property property) { return table[static_cast<std::size_t>(property)]; }

std::optional<std::size_t> called(std::span<const PropertyInfo> table, std::string_view text) {
    const std::string wanted = fold(text);
    // "heat" is a word of one and the name of another: what conditions call it goes first.
    for (const auto by : {&PropertyInfo::key, &PropertyInfo::word, &PropertyInfo::name})
        for (std::size_t at = 0; at < table.size(); ++at)
            if (!wanted.empty() && fold(table[at].*by) == wanted) return at;
    return std::nullopt;
}

std::optional<Property> property_of(std::string_view text) {
    const auto at = called(table, text);
    return at ? std::optional(static_cast<Property>(*at)) : std::nullopt;
}

}  // namespace standin
