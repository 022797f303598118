// What moves one property of a batch, and what makes its band wide.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "standin/colour_part.hpp"
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
    Reason reason{};       ///< which quantity of what
};

/// Something a maker can measure and write into a kitchen file.
struct Measurement {
    std::string what;     ///< "the pH of the mixed batch"
    std::string line;     ///< of the kitchen file, with the usual figure in place of the maker's own: "batch pH: 5.4"
    Band known;           ///< the band that would be left, were the reading the usual one
    double narrower = 0;  ///< share of the band's width that it takes away
    Reason reason{};      ///< what of which food, and the usual figure
};

/// One of the things that multiply into a property.
struct Factor {
    std::string what;       ///< "salt", "cold"
    double value = 1;       ///< 1: nothing is lost by it; of binder: what it adds
    double gives_back = 0;  ///< how much higher the property would be, were nothing lost by it
};

/// Several readings that do together what none does alone.
struct MeasuredTogether {
    std::vector<std::string> what, lines;  ///< as of `Measurement`, the one that helps most first
    Band known;                            ///< the band that would be left, were each reading the usual one
    double narrower = 0;                   ///< share of the band's width that they take away
    std::vector<Reason> reasons{};
};

struct WhyAnswer {
    Property property = Property::ph;
    std::optional<ColourPart> colour{};  ///< where it was asked instead of the property
    Band band;
    std::vector<LineLever> lines;                ///< what moves it most, first; those that hardly do are left out
    std::vector<Unknown> unknowns;               ///< what widens it most, first
    std::vector<Measurement> measurements;       ///< the one that helps most first
    std::optional<MeasuredTogether> together{};  ///< absent: the best one alone does nearly as much
    std::vector<Factor> factors;                 ///< of bind: what costs most first; empty of everything else
    Prediction prediction;                       ///< allergens and cautions come with every answer

    const PropertyInfo& asked() const { return colour ? info(*colour) : info(property); }
};

}  // namespace standin
