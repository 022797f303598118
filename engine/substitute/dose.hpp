// The dose of a role: what a swap keeps, in the role's own unit.
#pragma once

#include <optional>
#include <string_view>

#include "models/material.hpp"

namespace standin {

/// What `material` brings of `role`: mg chlorophyll, mg capsaicinoids, mmol titratable acid, g water bound, g fat, g meat, g dry
/// solids of nuts, g fresh-form equivalent of herbs, alliums and spices, g salt, g water, g sugars.
double dose_of(const Material& material, Role role);

/// Where the dose of a role stands that no model reads: herbs, nuts, alliums and spices. Nothing for the other roles.
std::optional<Amount> amount_of_dose(Role role);

/// A stand-in for a seasoning is one full dose of whatever the line seasons with, `times` that of a gram of the line, on whichever shelf
/// it stands itself: a seed that is spice and herb is missed once. In the roles of models it counts as what it is.
void count_as_flavour(Material& stand_in, Role role, const Material& line, double times);

/// The unit of a role's dose, for explanations.
std::string_view dose_unit(Role role);

}  // namespace standin
