// What breaks no rule and still deserves a second look: gaps, bands that claim too much, swaps that contradict each other.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "knowledge/records/records.hpp"

namespace standin {

struct Doubt {
    std::string_view kind;  ///< short and stable: "uncited-source"
    std::string_view says;  ///< what all of the kind have in common
    std::string record;     ///< key of Places: "ingredient spinach"
    std::string about;      ///< a few words for lists: "spinach, pH"
    std::string detail;     ///< what is odd about this one; may be empty
};

/// Doubts of one kind stand together. `records` must have passed the cross checks.
std::vector<Doubt> doubts_about(const Records& records);

/// The part of it that looks at bands.
std::vector<Doubt> doubts_about_bands(const Records& records);

/// The part of it that compares a food with what it is made of, and the green of a leaf with its lutein.
std::vector<Doubt> doubts_about_kin(const Records& records);

}  // namespace standin
