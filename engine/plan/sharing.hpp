// A garden shared among sausages, as a mixed integer programme.
//
//   maximise   sum over sausages of what it is worth to make any of it, and of each kilo of it
//   such that  no food of the list is used up by more than there is,
//              of each formula at most one way is taken, between the least batch and the most
//
// Worth falls with the distance from the formula. Kilos that were asked for are worth far more than any others, so they come first.
#pragma once

#include <optional>
#include <vector>

#include "optimize/mixed_integer.hpp"
#include "plan/columns.hpp"

namespace standin {

struct Worth {
    double a_kilo = 1, any = 3, asked = 100;  ///< of a kilo; of making any; of a kilo that was asked for
    double half_at = 5;                       ///< noticeable differences at which all of it is worth half
    double least_g = 1000;                    ///< no batch is smaller, but one that is asked so
    double most_g = 25000;                    ///< nor larger, where nothing on the list ends it
};

/// Grams of raw mass by column.
struct Shares {
    std::vector<double> grams;
    double worth = 0;
};

/// The programme itself, for whoever holds the solver against another: variables are the kilos of each column, then for each whether it
/// is made at all, then for each formula the kilos up to what was asked.
MixedInteger sharing_programme(const Columns& columns, const std::vector<std::optional<double>>& asked_g, const Worth& worth);

Shares shared(const Columns& columns, const std::vector<std::optional<double>>& asked_g, const Worth& worth);

/// Grams of one column alone, and which food ends it.
struct Alone {
    double grams = 0;
    std::string ends;
};
Alone alone(const Column& column, const std::map<std::string, double>& stock);

}  // namespace standin
