// A mixed integer linear programme, solved by GLPK.
//
//   maximise  gain' x
//   such that rows' x <= room,  low <= x <= high,  the integers whole
//
// For small programmes: tens of variables, exact but for the tolerances of the solver (1e-7).
#pragma once

#include <cstddef>
#include <optional>
#include <utility>
#include <vector>

namespace standin {

struct MixedInteger {
    struct Variable {
        double gain = 0, low = 0, high = 0;
        bool whole = false;
    };
    struct Row {
        std::vector<std::pair<std::size_t, double>> parts;  ///< variable, by which it counts
        double room = 0;
    };
    std::vector<Variable> variables;
    std::vector<Row> rows;
};

/// The best x, one a variable, within its bounds; nothing where no x keeps the rows. Deterministic.
std::optional<std::vector<double>> best_of(const MixedInteger& programme);

}  // namespace standin
