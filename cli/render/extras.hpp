// What goes beside an answer: money, the rest of a label, the cold store.
#pragma once

#include <optional>
#include <vector>

#include "standin/engine.hpp"

namespace standin::cli {

struct Extras {
    const Engine* engine = nullptr;
    const PriceList* prices = nullptr;  ///< null: nothing is said of money
    const Formula* base = nullptr;      ///< what variants and stand-ins are compared with
    std::optional<Cost> cost{};
    std::vector<Cost> costs{};  ///< of several formulas, one each
    std::optional<Paper> paper{};
    std::vector<KeepForLater> glut{};

    /// Of a variant from the base; nothing without prices.
    std::optional<CostChange> change(const Formula& variant) const;
};

}  // namespace standin::cli
