// Who eats it and must go without a food, where a text says so: "my son is allergic to sesame", "Nussallergie", "Oma verträgt keine Milch".
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "knowledge/index/knowledge.hpp"

namespace standin {

/// What a reason of the recipe has as its role where it tells that.
constexpr std::string_view said_of_going_without_role = "goes-without";

struct MustGoWithout {
    bool said = false;                 ///< that somebody must go without something
    bool plainly = false;              ///< as an allergy, or as what somebody cannot eat: more than "nut-free" and "no nuts for Ben"
    bool of_a_packet = false;          ///< and tells of a packet or a place as well: what it names is or may be in the food all the same
    std::vector<std::string> foods{};  ///< names of kinds and foods; none where what it names is not known here

    /// Whether an allergen is among what they go without.
    bool takes(std::string_view allergen, const Knowledge& knowledge) const;
};

/// Of a sentence, a title or a clause. Nothing where it speaks of anybody ("if you are allergic"), of a packet alone ("allergy advice"), or
/// says that nobody is.
MustGoWithout must_go_without(std::string_view sentence, const Knowledge& knowledge);

}  // namespace standin
