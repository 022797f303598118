// Who eats it, where a text names people whom germs harm more than others.
#pragma once

#include <string>
#include <string_view>

#include "knowledge/knowledge.hpp"

namespace standin {

/// What a reason of the recipe has as its role where it tells who eats it.
constexpr std::string_view said_of_guests_role = "guests";

/// The words of a sentence that name them: "pregnant", "nursing home", "schwanger"; empty where it names none, says that it is not for
/// them, or only sounds so ("baby spinach", "old school", "the shop by the school").
std::string guests_in(std::string_view sentence, const Knowledge& knowledge);

/// Likewise, of the old by their age or as kin ("her 90th birthday", "for Grandad", "Nan and Gramps") and of the small by the feast of
/// their place ("kindergarten fair"), alone.
std::string old_or_small_in(std::string_view sentence, const Knowledge& knowledge);

}  // namespace standin
