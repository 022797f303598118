// Ways to make each formula from a list, as columns of a programme: what a kilo of it takes of what is on hand.
#pragma once

#include <map>
#include <set>
#include <string>
#include <vector>

#include "evaluate/checked_formula.hpp"
#include "standin/plan.hpp"
#include "substitute/context.hpp"
#include "substitute/stock.hpp"

namespace standin {

struct Column {
    std::size_t formula = 0;
    bool as_written = false;  ///< the formula itself, whatever is on the list
    double distance = 0;
    Nearness nearness = Nearness::same;
    std::vector<Edit> edits;
    Formula batch;                         ///< of `batch_g`
    double batch_g = 0;                    ///< raw mass
    std::map<std::string, double> a_gram;  ///< by food: grams as picked or bought behind a gram of raw mass
};

struct Columns {
    std::vector<Column> all;
    std::vector<std::vector<Reason>> conflict;  ///< one a formula: why there is no way to make it; empty where there is
    std::vector<Presumption> presumed;
    /// Grams of each food that may be used, as picked or bought; a food that is not in it there is plenty of.
    std::map<std::string, double> stock;
    std::set<std::string> left_out;  ///< asked to be: none of it is used, and none is worth buying
};

/// The advisor's variants of each formula for the list, at its own size and at the size that the list makes, and the formula as written.
Result<Columns> columns_for(const std::vector<CheckedFormula>& formulas, const PlanRequest& request, const Context& context);

}  // namespace standin
