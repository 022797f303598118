// What text and HTML pages say alike of a mended mass.
#pragma once

#include <string>
#include <vector>

#include "render/detail.hpp"
#include "standin/mend.hpp"

namespace standin::cli {

/// The answer in a sentence or two.
std::string answer_first(const MendAnswer& answer, Units units);

/// What the formula's making did, and what to do about it first.
std::vector<std::string> causes(const MendAnswer& answer, Units units);

/// "too sour: one noticeable step less sour", and where no model stands behind it.
std::string as_taken(const TastedWord& word);
/// "pH 4.9 measured, where the formula says 5.31 (5.12-5.52); what follows goes by 4.9".
std::string as_measured(const MeasuredValue& measured);
/// Of each word what makers do that no model judges, in the maker's units.
std::vector<std::string> practices(const MendAnswer& answer, Units units);
/// Steps in the maker's units.
std::vector<std::string> steps(const std::vector<std::string>& metric, Units units);

/// "Add to the mass", "Fold in plain mass".
std::string heading_of(const MendWay& way);
/// What stands over what is added beside plain mass.
std::string then_into_all(const MendWay& way);
/// How it goes in: "dissolved in 90 g cold water, so that ...".
std::string how_in(const Ingoing& in, Units units);
/// What the plain mass is: "3.2 kg in all, the formula again without white wine vinegar".
std::string plain_in_short(const MendWay& way, Units units);
/// "too sour: sourness 14.2 -> 11.1 mmol/kg, 83 %".
std::string want_in_short(const WantResult& want, const MendWay& way);
/// Properties worth a row: what was to move, and what moved besides.
/// What is to be known of a way beside the tastes it mends.
std::vector<std::string> beside_wants(const MendWay& way, const MendAnswer& answer, Units units);
std::vector<Property> rows_of(const MendWay& way, bool full);

}  // namespace standin::cli
