// What is said of allergens: sure ones, what a packet may hold, what stands beside the mass, traces by reckoning.
#pragma once

#include <string>
#include <vector>

#include "standin/prediction.hpp"

namespace standin::cli {

/// "milk, sesame and perhaps wheat and soy (check the packet); beside the mass: egg"; "none of the listed ones" where there is none.
std::string allergens_in_short(const std::vector<AllergenText>& allergens);

/// One by itself, as it stands in a row of them: "perhaps wheat", "milk (beside the mass)".
std::string allergen_in_short(const AllergenText& a);

/// "sulphite, from white wine; by reckoning up to 14 mg/kg".
std::string allergen_with_source(const AllergenText& a);

/// A line each for what is sure or a trace, and one for all packets: "check the packet of rusk for milk and soy; of mustard for celery".
std::vector<std::string> allergens_in_lines(const std::vector<AllergenText>& allergens);

/// Of sulphite by reckoning, less than any code wants declared.
bool is_trace(const AllergenText& a);

/// Whether a packet decides about any of them.
bool asks_for_packets(const std::vector<AllergenText>& allergens);

}  // namespace standin::cli
