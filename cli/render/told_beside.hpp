// What a formula that is converted takes along: its allergens, and what is to be minded of it.
#pragma once

#include <string>
#include <vector>

#include "standin/engine.hpp"

namespace standin::cli {

struct ToldBeside {
    std::vector<std::string> allergens, cautions;
    std::vector<std::string> of_words;  ///< those cautions that the maker's own words and figures raise
};

/// Of the maker's words in full, of foods in a line; not what goes for every batch.
ToldBeside told_beside(const Prediction& prediction);

/// The text of a formula with what is told of it in lines that a reader passes over, above its method.
std::string with_told(const std::string& formula_text, const ToldBeside& told);

}  // namespace standin::cli
