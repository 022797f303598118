// What somebody who eats it must go without, by the words of the formula: told on every page, and kept from being brought in.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "knowledge/index/knowledge.hpp"
#include "safety/exclusions.hpp"
#include "standin/formula.hpp"
#include "standin/prediction.hpp"

namespace standin {

/// The caution that something of it is in the batch, or may be.
constexpr std::string_view guest_clash_id = "guest-clash";

struct GoesWithout {
    std::string words;              ///< of the maker
    bool of_title = false;          ///< they stand in the title
    bool promised = false;          ///< the title promises it of everybody: "nut-free"
    std::vector<Exclusion> left{};  ///< what they go without; empty where it is not known here
};

/// By the title, the notes and what stands beside the lines, each once; with what the title promises, where that is wanted. Who keeps
/// kosher goes without milk as well where there is meat.
std::vector<GoesWithout> goes_without(const Formula& formula, const Knowledge& knowledge, bool promises);

/// Milk and what is made of it, where a formula has meat or fowl for it to stand beside; what it is called is "milk".
std::optional<Exclusion> milk_beside_meat(const Formula& formula, const Knowledge& knowledge);

/// The lines and whatever else of a formula holds it, or may.
std::vector<std::string> holding(const Formula& formula, const Exclusion& exclusion, const Knowledge& knowledge);

/// One for each of them that is no promise of the title.
std::vector<CautionText> cautions_of_guests(const Formula& formula, const Knowledge& knowledge);

}  // namespace standin
