// What a variant is called, where it comes from, and what its stand-ins ask of the maker.
#pragma once

#include <vector>

#include "knowledge/index/knowledge.hpp"
#include "standin/advice.hpp"

namespace standin {

/// Gives `variant` a title of its own, its parent and what there is to do about what came in. `wants` are those asked for.
void name_variant(Formula& variant, const Formula& base, const std::vector<Edit>& edits, const std::vector<std::string>& wants,
                  const Knowledge& knowledge);

/// Of a variant that no longer has what its base is named after: the name says that it is something else.
void name_as_another(Formula& variant);

/// The same for one stand-in: `line` is the name of what it stands for.
void name_swapped(Formula& variant, const Formula& base, const StandIn& stand_in, const std::string& line);

/// What brings the sharpness back at the plate goes with the variant, for its bench sheet: "plate: ...".
void put_on_the_plate(Formula& variant, const std::vector<Reason>& gives_back);

}  // namespace standin
