// What moves one property of a batch, and what makes its band wide.
#pragma once

#include <string>
#include <vector>

#include "standin/prediction.hpp"

namespace standin {

/// One line made a tenth heavier.
struct LineLever {
    std::size_t line = 0;
    Band change;  ///< of the property, in its own unit, over the common draws
};

/// Something that is not known well enough.
struct Unknown {
    std::string what;      ///< in words: "pH of the pork"
    std::string advice;    ///< what would tell
    bool kitchen = false;  ///< the maker can find out; else the model itself does not know
    double share = 0;      ///< of the property's variance that goes with it
    Band known;            ///< the band that would be left, were it exactly at its middle
};

struct WhyAnswer {
    Property property = Property::ph;
    Band band;
    std::vector<LineLever> lines;   ///< what moves it most, first; those that hardly do are left out
    std::vector<Unknown> unknowns;  ///< what widens it most, first
    Prediction prediction;          ///< allergens and cautions come with every answer
};

}  // namespace standin
