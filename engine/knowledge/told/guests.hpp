// Who eats it, where a text names people whom germs harm more than others.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "knowledge/index/knowledge.hpp"

namespace standin {

/// What a reason of the recipe has as its role where it tells who eats it.
constexpr std::string_view said_of_guests_role = "guests";

/// The words of a sentence that name them: "pregnant", "nursing home", "schwanger"; empty where it names none, says that it is not for
/// them, or only sounds so ("baby spinach", "old school", "the shop by the school").
std::string guests_in(std::string_view sentence, const Knowledge& knowledge);

/// Whether those words from `first` up to `last` that name a people are of something else: "baby spinach", "old school", "school fair",
/// "kosher salt". A comma may stand as a word, and ends what is said of them.
bool only_sounds_so(const std::vector<std::string>& words, std::size_t first, std::size_t last, const Knowledge& knowledge);

/// Whether a word for those who eat it is somebody's name in a text, as its capitals tell: "Constance Child's garlic sausage", but neither
/// "my Child's sausage" nor "Happy Child's Links", where every word has one.
bool is_possessive_name(std::string_view text, std::string_view folded, const Knowledge& knowledge);

/// As guests_in, of the old by their age or as kin ("her 90th birthday", "for Grandad", "Nan and Gramps") and of the small by the feast of
/// their place ("kindergarten fair"), alone.
std::string old_or_small_in(std::string_view sentence, const Knowledge& knowledge);

}  // namespace standin
