// Slips of the pen: a word that nobody knows and that one known word is a letter or two away from.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "knowledge/index/knowledge.hpp"

namespace standin {

struct Slip {
    std::string written, meant;
};

struct WithoutSlips {
    std::string line;         ///< with the words that are meant
    std::vector<Slip> slips;  ///< in the order of the line
    std::size_t edits = 0;    ///< letters changed, in all
};

/// Ways to read the words of `line` that nobody knows as known ones, the nearest first; none where a word has no known one near it, or
/// where what lies near it may hurt.
std::vector<WithoutSlips> without_slips(std::string_view line, const Knowledge& knowledge);

/// An allergen or an animal that another word near a slip would bring and `read` has not: then it is asked. Empty where there is none.
std::string other_danger_near(const std::vector<Slip>& slips, const Ingredient& read, const Knowledge& knowledge);

}  // namespace standin
